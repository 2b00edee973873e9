/**
 * Under which number a house is reached when something happens to what it lends. A house
 * that states no number for every hour is reached under its telephone, and then it is
 * said that this one is answered in office hours only. Pure.
 */
import { z } from "zod";

export const phoneHours = ["any hour", "office hours"] as const;
export type PhoneHours = (typeof phoneHours)[number];

export const EmergencyLine = z.strictObject({ phone: z.string(), hours: z.enum(phoneHours) });
export type EmergencyLine = z.infer<typeof EmergencyLine>;

export function emergencyLine({
  phone,
  emergencyPhone,
}: {
  phone: string;
  emergencyPhone?: string | undefined;
}): EmergencyLine {
  return emergencyPhone === undefined || emergencyPhone === ""
    ? { phone, hours: "office hours" }
    : { phone: emergencyPhone, hours: "any hour" };
}
