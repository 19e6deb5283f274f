using RetrofitCalc.Cli;

return CommandLine.Run(args);
