-- AlterTable
ALTER TABLE "loan" ADD COLUMN     "activities" TEXT[] DEFAULT ARRAY[]::TEXT[];

-- AlterTable
ALTER TABLE "loan_line" ADD COLUMN     "remark" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "verdict" TEXT;

-- AlterTable
ALTER TABLE "permit" ADD COLUMN     "withdrawn_because" TEXT NOT NULL DEFAULT '',
ADD COLUMN     "withdrawn_on" DATE;

-- AlterTable
ALTER TABLE "stage" ADD COLUMN     "through" TEXT[] DEFAULT ARRAY[]::TEXT[];

-- DropTable
DROP TABLE "auth_rate_limit";

-- CreateTable
CREATE TABLE "sign_in_failure" (
    "id" BIGSERIAL NOT NULL,
    "email_key" CHAR(64) NOT NULL,
    "failed_at" TIMESTAMPTZ(6) NOT NULL,

    CONSTRAINT "sign_in_failure_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "sign_in_failure_email_key_failed_at_idx" ON "sign_in_failure"("email_key", "failed_at");

-- CreateIndex
CREATE INDEX "sign_in_failure_failed_at_idx" ON "sign_in_failure"("failed_at");

-- What must never be -----------------------------------------------------------

ALTER TABLE loan
  ADD CONSTRAINT loan_activities_set CHECK (activities <@ ARRAY['sampling', 'casting and scanning']);
ALTER TABLE loan_line
  ADD CONSTRAINT loan_line_verdict_set
    CHECK (verdict IN ('no change', 'change within wear', 'needs treatment', 'damage')),
  ADD CONSTRAINT loan_line_verdict_at_home CHECK (verdict IS NULL OR state IN ('checked in', 'closed'));
ALTER TABLE permit
  ADD CONSTRAINT permit_withdrawn_because CHECK ((withdrawn_on IS NULL) = (withdrawn_because = ''));

-- A specimen is not checked in without a verdict, and a verdict is not changed.
CREATE FUNCTION check_loan_line_verdict() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.state = 'checked in' AND OLD.state <> 'checked in' AND NEW.verdict IS NULL THEN
    RAISE EXCEPTION 'anatheca:loan.verdict-missing';
  END IF;
  IF OLD.verdict IS NOT NULL AND (NEW.verdict, NEW.remark) IS DISTINCT FROM (OLD.verdict, OLD.remark) THEN
    RAISE EXCEPTION 'anatheca:loan.verdict-fixed';
  END IF;
  RETURN NEW;
END $$;

CREATE TRIGGER verdict_at_home BEFORE UPDATE ON loan_line
  FOR EACH ROW EXECUTE FUNCTION check_loan_line_verdict();

GRANT SELECT, INSERT, DELETE ON sign_in_failure TO anatheca_app;
GRANT USAGE ON SEQUENCE sign_in_failure_id_seq TO anatheca_app;
