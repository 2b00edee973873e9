/** Words of the sign-in page, in English. */
export const signInWords = {
  title: "Sign in",
  about: "The lending office for preserved anatomical specimens",
  email: "E-mail",
  password: "Password",
  submit: "Sign in",
  catalogue: "Look at the open catalogue",
  help: "Accounts are given by the centre. If you have none, or forgot the password, write to its registrar.",
  refusals: {
    "sign-in.wrong": "This e-mail and password do not belong together. Check both and try again.",
    "sign-in.too-often": "Too many attempts under this e-mail. The next one is possible in {minutes} min.",
  },
} as const;
