-- What rules of law ask of a specimen and of the place it goes to. Null is not known, and never taken for a yes.
ALTER TABLE "specimen" ADD COLUMN     "anatomical_examination" BOOLEAN,
ADD COLUMN     "contains_cells" BOOLEAN,
ADD COLUMN     "death_papers" BOOLEAN,
ADD COLUMN     "death_period" TEXT,
ADD COLUMN     "free_fluid_ml" INTEGER,
ADD COLUMN     "held_since" DATE,
ADD COLUMN     "imported" BOOLEAN,
ADD COLUMN     "made_period" TEXT,
ADD COLUMN     "origin_country" CHAR(2),
ADD COLUMN     "species_appendix" TEXT,
ADD COLUMN     "whole_body" BOOLEAN;

ALTER TABLE "venue" ADD COLUMN     "floor_load_kg_per_m2" DOUBLE PRECISION,
ADD COLUMN     "subdivision_code" TEXT,
ADD COLUMN     "town" TEXT NOT NULL DEFAULT '';

ALTER TABLE "specimen"
  ADD CONSTRAINT specimen_free_fluid_positive CHECK (free_fluid_ml >= 0),
  ADD CONSTRAINT specimen_species_appendix_animal CHECK (NOT (human AND species_appendix IS NOT NULL));
ALTER TABLE "venue"
  ADD CONSTRAINT venue_subdivision_in_country CHECK (subdivision_code LIKE country_code || '-%'),
  ADD CONSTRAINT venue_floor_load_positive CHECK (floor_load_kg_per_m2 > 0);
