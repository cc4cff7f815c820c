-- The trade's words for what the season holds. The record of choices keeps its column: the chain over it holds its name.
ALTER TABLE course RENAME TO program;
ALTER TABLE pass RENAME COLUMN course TO program;
ALTER TABLE law RENAME TO distribution;
ALTER TABLE law_past RENAME TO distribution_past;
ALTER TABLE distribution_past RENAME COLUMN law TO distribution;
ALTER TABLE outlook RENAME TO assumptions;
ALTER TABLE assumptions RENAME COLUMN law TO distribution;
ALTER TABLE weed_pressure RENAME COLUMN first_plant_loss_law TO first_plant_loss_distribution;
ALTER TABLE spray_plan RENAME COLUMN course TO program;
ALTER TABLE tillage_work RENAME COLUMN course TO program;
UPDATE desk_change SET kind = 'program' WHERE kind = 'course';
