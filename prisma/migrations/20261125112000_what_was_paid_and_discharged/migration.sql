-- What was paid against what a loan costs, and the customs office's word that what crossed a border is discharged.
CREATE TABLE "payment" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "amount_minor" BIGINT NOT NULL,
    "currency" CHAR(3) NOT NULL,
    "day" DATE NOT NULL,
    "reference" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "account_id" TEXT NOT NULL,
    "entered_at" TIMESTAMPTZ(6) NOT NULL,
    "sequence" BIGSERIAL NOT NULL,

    CONSTRAINT "payment_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "customs_discharge" (
    "id" UUID NOT NULL,
    "loan_id" UUID NOT NULL,
    "discharged_on" DATE NOT NULL,
    "office" TEXT NOT NULL,
    "reference" TEXT NOT NULL,
    "note" TEXT NOT NULL DEFAULT '',
    "account_id" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(6) NOT NULL,
    "sequence" BIGSERIAL NOT NULL,

    CONSTRAINT "customs_discharge_pkey" PRIMARY KEY ("id")
);

CREATE INDEX "payment_loan_id_sequence_idx" ON "payment"("loan_id", "sequence");
CREATE INDEX "customs_discharge_loan_id_sequence_idx" ON "customs_discharge"("loan_id", "sequence");

ALTER TABLE "payment" ADD CONSTRAINT "payment_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "customs_discharge" ADD CONSTRAINT "customs_discharge_loan_id_fkey" FOREIGN KEY ("loan_id") REFERENCES "loan"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What must never be -----------------------------------------------------------

DO $$
DECLARE
  audited text[][] := ARRAY[
    ['public.payment', 'id'], ['public.customs_discharge', 'id']
  ];
  entry text[];
BEGIN
  FOREACH entry SLICE 1 IN ARRAY audited LOOP
    EXECUTE format('CREATE TRIGGER audited AFTER INSERT OR UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION audit_change(%L)', entry[1], entry[2]);
    EXECUTE format('CREATE TRIGGER append_only BEFORE UPDATE OR DELETE ON %s FOR EACH ROW EXECUTE FUNCTION refuse_change()', entry[1]);
    EXECUTE format('CREATE TRIGGER never_emptied BEFORE TRUNCATE ON %s FOR EACH STATEMENT EXECUTE FUNCTION refuse_change()', entry[1]);
  END LOOP;
END $$;

ALTER TABLE payment
  ADD CONSTRAINT payment_kind_set CHECK (kind IN ('received', 'paid back', 'put off')),
  ADD CONSTRAINT payment_amount_positive CHECK (amount_minor > 0),
  ADD CONSTRAINT payment_put_off_has_reason CHECK (kind <> 'put off' OR note <> ''),
  ADD CONSTRAINT payment_has_reference CHECK (kind = 'put off' OR reference <> '');
ALTER TABLE customs_discharge
  ADD CONSTRAINT customs_discharge_is_whole CHECK (office <> '' AND reference <> '');

-- The same entry twice is a slip of the hand.
CREATE UNIQUE INDEX payment_entered_once ON payment (loan_id, kind, day, reference, amount_minor) WHERE kind <> 'put off';

-- Money counts against a quotation that was accepted, in its currency, and no more goes back than came in.
CREATE FUNCTION check_payment_has_ground() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  owed_in char(3);
  held bigint;
BEGIN
  SELECT costing.currency INTO owed_in
  FROM costing JOIN costing_answer ON costing_answer.costing_id = costing.id
  WHERE costing.loan_id = NEW.loan_id AND costing.kind = 'quotation' AND costing_answer.outcome = 'accepted'
  ORDER BY costing.version DESC LIMIT 1;
  IF owed_in IS NULL THEN
    RAISE EXCEPTION 'anatheca:payment.not-accepted';
  END IF;
  IF NEW.currency <> owed_in THEN
    RAISE EXCEPTION 'anatheca:payment.other-currency';
  END IF;
  IF NEW.kind = 'paid back' THEN
    SELECT coalesce(sum(CASE kind WHEN 'received' THEN amount_minor WHEN 'paid back' THEN -amount_minor ELSE 0 END), 0)
    INTO held FROM payment WHERE loan_id = NEW.loan_id AND currency = NEW.currency;
    IF NEW.amount_minor > held THEN
      RAISE EXCEPTION 'anatheca:payment.back-too-much';
    END IF;
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER payment_has_ground BEFORE INSERT ON payment FOR EACH ROW EXECUTE FUNCTION check_payment_has_ground();

GRANT SELECT, INSERT ON payment, customs_discharge TO anatheca_app;
GRANT USAGE ON ALL SEQUENCES IN SCHEMA public TO anatheca_app;
