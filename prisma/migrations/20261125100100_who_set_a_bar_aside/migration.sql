-- AlterTable
ALTER TABLE "rule_override" ADD COLUMN     "decided_by" TEXT NOT NULL;
