-- Shares of a lease by kind of cost. Blank in an older book: all go by the one share of costs as before.
ALTER TABLE farm ADD COLUMN seed_share REAL;
ALTER TABLE farm ADD COLUMN herbicide_share REAL;
ALTER TABLE farm ADD COLUMN insecticide_share REAL;
ALTER TABLE farm ADD COLUMN fungicide_share REAL;
ALTER TABLE farm ADD COLUMN trips_share REAL;
ALTER TABLE farm ADD COLUMN drying_share REAL;
ALTER TABLE farm ADD COLUMN hauling_share REAL;
