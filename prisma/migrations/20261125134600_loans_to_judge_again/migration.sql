-- Loans whose suitability is to be judged again, because consent, a licence or a venue changed. The lower rooms know
-- nothing of loans, so the database notes it in the transaction of the change; a job works the notes off.
CREATE TABLE "loan_to_judge" (
    "loan_id" UUID NOT NULL,
    "occasion" TEXT NOT NULL,
    "transaction_id" BIGINT NOT NULL,
    "noted_at" TIMESTAMPTZ(6) NOT NULL DEFAULT clock_timestamp(),

    CONSTRAINT "loan_to_judge_pkey" PRIMARY KEY ("loan_id", "occasion", "transaction_id")
);

ALTER TABLE "loan_to_judge" ADD CONSTRAINT "loan_to_judge_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- What must never be -----------------------------------------------------------

ALTER TABLE loan_to_judge
  ADD CONSTRAINT loan_to_judge_occasion_set CHECK (occasion IN ('consent changed', 'licence changed', 'venue changed'));

-- One note for each loan, occasion and transaction: transactions never wait for each other here.
CREATE FUNCTION note_loans_of_specimens(specimens uuid[], why text) RETURNS void LANGUAGE sql AS $$
  INSERT INTO loan_to_judge (loan_id, occasion, transaction_id)
  SELECT DISTINCT loan.id, why, pg_current_xact_id()::text::bigint
  FROM loan_line JOIN loan ON loan.id = loan_line.loan_id
  WHERE loan_line.specimen_id = ANY (specimens) AND loan.closed_at IS NULL AND loan.submitted_at IS NOT NULL
  ON CONFLICT DO NOTHING
$$;

CREATE FUNCTION note_loans_of_venue(venue uuid, why text) RETURNS void LANGUAGE sql AS $$
  INSERT INTO loan_to_judge (loan_id, occasion, transaction_id)
  SELECT loan.id, why, pg_current_xact_id()::text::bigint
  FROM loan
  WHERE loan.venue_id = venue AND loan.closed_at IS NULL AND loan.submitted_at IS NOT NULL
  ON CONFLICT DO NOTHING
$$;

-- The first argument is the occasion, the second the column of the table that says whom the change is about.
CREATE FUNCTION note_loans_to_judge() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  changed jsonb := CASE WHEN TG_OP = 'DELETE' THEN to_jsonb(OLD) ELSE to_jsonb(NEW) END;
  subject text := changed ->> TG_ARGV[1];
BEGIN
  IF TG_OP = 'UPDATE' THEN
    IF NEW IS NOT DISTINCT FROM OLD THEN
      RETURN NULL;
    END IF;
  END IF;
  CASE TG_ARGV[1]
    WHEN 'specimen_id' THEN
      PERFORM note_loans_of_specimens(ARRAY[subject::uuid], TG_ARGV[0]);
    WHEN 'donor_code' THEN
      PERFORM note_loans_of_specimens(
        ARRAY(SELECT specimen_id FROM specimen_donor WHERE donor_code = subject), TG_ARGV[0]);
    WHEN 'consent_id' THEN
      PERFORM note_loans_of_specimens(
        ARRAY(SELECT specimen_donor.specimen_id FROM specimen_donor
              JOIN consent ON consent.donor_code = specimen_donor.donor_code WHERE consent.id = subject::uuid),
        TG_ARGV[0]);
    ELSE
      PERFORM note_loans_of_venue(subject::uuid, TG_ARGV[0]);
  END CASE;
  RETURN NULL;
END $$;

DO $$
DECLARE
  watched text[][] := ARRAY[
    ['consent', 'consent changed', 'donor_code'], ['consent_answer', 'consent changed', 'consent_id'],
    ['specimen_donor', 'consent changed', 'specimen_id'],
    ['permit', 'licence changed', 'specimen_id'], ['title', 'licence changed', 'specimen_id'],
    ['licence', 'licence changed', 'venue_id'],
    ['venue', 'venue changed', 'id'], ['passage', 'venue changed', 'venue_id'],
    ['facility_report', 'venue changed', 'venue_id']
  ];
  one text[];
BEGIN
  FOREACH one SLICE 1 IN ARRAY watched LOOP
    EXECUTE format('CREATE TRIGGER judge_again AFTER INSERT OR UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION note_loans_to_judge(%L, %L)',
                   one[1], one[2], one[3]);
  END LOOP;
END $$;

GRANT SELECT, INSERT, DELETE ON loan_to_judge TO anatheca_app;
