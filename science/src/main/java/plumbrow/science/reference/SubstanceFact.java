package plumbrow.science.reference;

/** One value of one active ingredient. */
record SubstanceFact(String name, String cas, String kind, Fact fact) implements Entry {
    @Override
    public String about() {
        return name + " " + fact.about();
    }

    @Override
    public String says() {
        return fact.value().printed();
    }

    @Override
    public Origin origin() {
        return fact.origin();
    }

    @Override
    public Backing backing() {
        return fact.backing();
    }

    @Override
    public int row() {
        return fact.row();
    }
}
