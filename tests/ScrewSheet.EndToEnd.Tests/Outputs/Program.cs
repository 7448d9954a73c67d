using ScrewSheet.EveryOutput;

// every output of every workbook of a folder, each into a file of its own: WORKBOOKS OUT
Directory.CreateDirectory(args[1]);
Outputs outputs = new(args[1]);
foreach (string workbook in Directory.GetFiles(args[0], "*.screwsheet").Order(StringComparer.Ordinal)) outputs.Make(workbook);
return 0;
