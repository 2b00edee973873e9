/** Where a facility report is read as a paper. */
export const facilityPaperWords = {
  asPdf: "As PDF",
  readAs: (version: number, language: string, size: string) =>
    `Facility report, version ${version}, in ${language}, ${size}`,
} as const;
