-- How long the conservator will work on a specimen before it leaves: the quotation takes the hours from here.
ALTER TABLE "loan_line" ADD COLUMN "treatment_hours" DECIMAL(6,2),
ADD COLUMN "treatment_work" TEXT NOT NULL DEFAULT '',
ADD COLUMN "treatment_by" TEXT NOT NULL DEFAULT '',
ADD COLUMN "treatment_on" DATE;

-- What must never be -----------------------------------------------------------

ALTER TABLE loan_line
  ADD CONSTRAINT loan_line_treatment_not_negative CHECK (treatment_hours IS NULL OR treatment_hours >= 0),
  ADD CONSTRAINT loan_line_treatment_is_whole CHECK (
    (treatment_hours IS NULL) = (treatment_on IS NULL)
    AND (treatment_hours IS NULL) = (treatment_by = '')
    AND (treatment_hours IS NOT NULL OR treatment_work = '')
  );
