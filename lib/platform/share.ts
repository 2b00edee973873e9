/**
 * A share of a whole, such as relative humidity: kept as a fraction, typed and
 * read as a percentage. What is wrong with it is said in percent.
 */
import { z } from "zod";

export const Share = z.number().min(0, "share.range").max(1, "share.range");
export type Share = z.infer<typeof Share>;
