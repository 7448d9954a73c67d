using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace ScrewSheet.SafetyReader;

/// <summary>The effects a hostile cell would like to have, each small and harmless.</summary>
internal static class Planted
{
    public static void Do(string kind, string folder)
    {
        switch (kind)
        {
            case "read":
                _ = File.ReadAllBytes("/etc/hostname");
                break;
            case "write":
                File.WriteAllText(Path.Combine(folder, "planted"), "x");
                break;
            case "delete":
                File.Delete(Path.Combine(folder, "nothing"));
                break;
            case "socket":
                using (Socket socket = new(AddressFamily.InterNetwork, SocketType.Dgram, ProtocolType.Udp)) socket.Connect(new IPEndPoint(IPAddress.Loopback, 9));
                break;
            case "program":
                using (Process program = Process.Start("/bin/true")) program.WaitForExit();
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(kind), kind, "Nothing is planted by that name.");
        }
    }
}
