-- Nothing is quoted without a decision, nothing is billed without a quotation that was accepted, and a quotation is
-- answered once, in time, and only while it is the newest. The moments are those that the rows state.

CREATE FUNCTION check_costing_has_ground() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.kind = 'quotation' THEN
    IF NOT EXISTS (SELECT 1 FROM decision WHERE loan_id = NEW.loan_id AND office = 'curator' AND outcome = 'accept') THEN
      RAISE EXCEPTION 'anatheca:costing.not-decided';
    END IF;
    IF NEW.valid_until IS NULL THEN
      RAISE EXCEPTION 'anatheca:costing.no-end';
    END IF;
  ELSIF NOT EXISTS (
    SELECT 1 FROM costing JOIN costing_answer ON costing_answer.costing_id = costing.id
    WHERE costing.loan_id = NEW.loan_id AND costing.kind = 'quotation' AND costing_answer.outcome = 'accepted'
  ) THEN
    RAISE EXCEPTION 'anatheca:costing.not-accepted';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER costing_has_ground BEFORE INSERT ON costing FOR EACH ROW EXECUTE FUNCTION check_costing_has_ground();

CREATE FUNCTION check_quotation_answered_in_time() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  asked costing%ROWTYPE;
BEGIN
  SELECT * INTO asked FROM costing WHERE id = NEW.costing_id;
  IF asked.kind IS DISTINCT FROM 'quotation' THEN
    RAISE EXCEPTION 'anatheca:costing.not-a-quotation';
  END IF;
  IF EXISTS (
    SELECT 1 FROM costing
    WHERE loan_id = asked.loan_id AND kind = asked.kind AND version > asked.version
  ) THEN
    RAISE EXCEPTION 'anatheca:costing.superseded';
  END IF;
  IF NEW.outcome = 'accepted' AND (NEW.answered_at AT TIME ZONE 'UTC')::date > asked.valid_until THEN
    RAISE EXCEPTION 'anatheca:costing.expired';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER quotation_answered_in_time BEFORE INSERT ON costing_answer
  FOR EACH ROW EXECUTE FUNCTION check_quotation_answered_in_time();
