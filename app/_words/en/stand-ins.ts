/** Words of specimens that stand in for another, in English. */
export const standInWords = {
  title: (number: string) => `What could stand in for ${number}`,
  link: "Stand-ins",
  about:
    "Specimens that are free for all days of this loan, those first that show most of the same. What the rules say of one is judged once it is on the request.",
  nothingShown: "Nothing is recorded of what this specimen shows, so that nothing can be compared with it.",
  none: "No specimen that is free on these days shows any of the same.",
  caption: "Stand-ins, those that show most of the same first",
  number: "Number",
  what: "Title",
  preparation: "Preparation",
  use: "Use",
  shared: "Shows of the same",
  sharedOf: (shared: number, all: number) => `${shared} of ${all}`,
  take: "Put it in its place",
  takeFor: (number: string) => `Put ${number} in its place`,
  back: (number: string) => `Back to loan ${number}`,
} as const;
