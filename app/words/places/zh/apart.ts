/** A name within a sentence, set apart by spaces where it begins or ends in Latin letters or figures. */
export const apart = (name: string): string =>
  `${/^[!-~]/.test(name) ? ' ' : ''}${name}${/[!-~]$/.test(name) ? ' ' : ''}`;
