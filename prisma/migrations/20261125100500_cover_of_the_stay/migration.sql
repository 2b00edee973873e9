-- A carrier's certificate covers the road and ends at the venue's door. Those on record said nothing of it and were
-- read as holding at the venue too.
ALTER TABLE "cover" ADD COLUMN "covers_stay" BOOLEAN NOT NULL DEFAULT true;
