export type FieldReader = {
  typedOf: (name: string) => string;
  errorOf: (name: string) => string | undefined;
};
