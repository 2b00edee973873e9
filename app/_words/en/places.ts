/** The places of the program, by name, in English. */
export const placeWords = {
  due: "Due and at risk",
  specimens: "Specimens",
  stores: "Places",
  find: "Find specimens",
  slip: "Enquiry slip",
  yourLoans: "Your loans",
  yourInstitution: "Your institution",
  series: "Series",
  loans: "Loans",
  institutions: "Institutions",
  donors: "Donors",
  accounts: "Accounts",
  audit: "What happened",
  workings: "Workings",
  centre: "About the centre",
} as const;
