package plumbrow.app.command;

import picocli.CommandLine;

/** The whole command line, put together. */
public final class Commands {
    private Commands() {}

    /**
     * Runs one command.
     *
     * @return the exit code: 0 good, 1 nothing can be advised or something is barred, 2 bad input
     */
    public static int run(String[] arguments, Screen screen) {
        return run(arguments, screen, DeskDoor.REAL);
    }

    static int run(String[] arguments, Screen screen, DeskDoor door) {
        int code;
        try {
            code = line(screen, door).execute(arguments);
        } catch (Throwable unforeseen) {
            code = Faults.unforeseen(screen, unforeseen);
        }
        screen.out().flush();
        screen.err().flush();
        return code;
    }

    private static CommandLine line(Screen screen, DeskDoor door) {
        return new CommandLine(new Plumbrow(screen))
                .addSubcommand(new AskCommand(screen))
                .addSubcommand(new NextCommand(screen))
                .addSubcommand(new WeighCommand(screen))
                .addSubcommand(new CheckCommand(screen))
                .addSubcommand(new SeasonCommand(screen))
                .addSubcommand(new TodayCommand(screen))
                .addSubcommand(new FieldPlanCommand(screen))
                .addSubcommand(new HoursCommand(screen))
                .addSubcommand(new MixCommand(screen))
                .addSubcommand(new TaskDataCommand(screen))
                .addSubcommand(new StripsCommand(screen))
                .addSubcommand(new YearsCommand(screen))
                .addSubcommand(new PestCommand(screen))
                .addSubcommand(new MapCommand(screen))
                .addSubcommand(new SearchCommand(screen))
                .addSubcommand(new PlanCommand(screen))
                .addSubcommand(new FigureCommand(screen))
                .addSubcommand(new DataCommand(screen))
                .addSubcommand(new WorkbookCommand(screen))
                .addSubcommand(new CommandLine(new BookCommand(screen))
                        .addSubcommand(new BookBegin(screen))
                        .addSubcommand(new BookImport(screen))
                        .addSubcommand(new BookExport(screen)))
                .addSubcommand(new RowCommand(screen))
                .addSubcommand(new HistoryCommand(screen))
                .addSubcommand(new RecordCommand(screen))
                .addSubcommand(new LogCommand(screen))
                .addSubcommand(new HarvestCommand(screen))
                .addSubcommand(new ReadCommand(screen))
                .addSubcommand(new CardCommand(screen))
                .addSubcommand(new CommandLine(new PapersCommand(screen)).addSubcommand(new LabelConfirm(screen)))
                .addSubcommand(new BinderCommand(screen))
                .addSubcommand(new DemoCommand(screen, door))
                .addSubcommand(new ServeCommand(screen, door))
                .setOut(screen.out())
                .setErr(screen.err())
                .setExpandAtFiles(false)
                .setUsageHelpWidth(100)
                .setUsageHelpAutoWidth(screen.terminal())
                .setExecutionExceptionHandler((fault, command, parsed) -> Faults.say(screen, fault))
                .setParameterExceptionHandler((fault, given) -> Faults.sayUsage(screen, fault));
    }
}
