-- AlterTable
ALTER TABLE "passage" ADD COLUMN     "slope_percent" DOUBLE PRECISION;
