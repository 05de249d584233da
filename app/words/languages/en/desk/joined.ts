/** How a language puts words and figures together. */
export const joined = {
  names: (names: readonly string[]) => names.join(', '),
  clauses: (parts: readonly string[]) => parts.join(', '),
  apart: (parts: readonly string[]) => parts.join('; '),
  of: (what: string, said: string) => `${what}: ${said}`,
  aside: (said: string, more: string) => `${said} (${more})`,
  sentence: (said: string) => `${said}.`,
};
