-- Loss per weed plant as lowest, likely and highest, where somebody entered them: the number of a law of the season; blank where it is
-- the one number beside it.
ALTER TABLE weed_pressure ADD COLUMN first_plant_loss_law INTEGER;
