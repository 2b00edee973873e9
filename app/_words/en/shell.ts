/** Words of the frame, in English. */
export const shellWords = {
  skip: "Skip to the content",
  places: "Places",
  goToOrDo: "Go to or do",
  examples: [
    ["AN 2019.0142", "a specimen by its number, also a former one"],
    ["n. medianus", "what shows a structure"],
    ["L 2026-004", "a loan"],
    ["Kestrel Bay", "an institution"],
    ["new specimen", "a frequent act"],
  ],
  next: "What stands between now and the next step",
  nothingNext: "Nothing is waiting here.",
  sections: "Sections of this page",
  working: "Working",
  tryWorking: "Try it with other figures",
  pages: "Pages of this list",
  previousPage: "Previous page",
  nextPage: "Next page",
  signOut: "Sign out",
  notFoundTitle: "There is no such page",
  notFoundText:
    "The record does not exist, or it is not yours to see. Check the number, or start from the list.",
  errorTitle: "Something went wrong here",
  errorText: "Nothing you entered elsewhere is lost. The reference below helps whoever looks into it.",
  tryAgain: "Try again",
} as const;
