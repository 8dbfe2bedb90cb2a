Console.WriteLine("no benchmarks");
