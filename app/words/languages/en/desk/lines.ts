export const lines = {
  check: 'What will be added',
  nothingYet: 'What will be added stands here before it is saved.',
  willBeAdded: (what: string) => `${what} will be added.`,
  putRight: (count: number) =>
    count === 1 ? '1 line must be put right first.' : `${count} lines must be put right first.`,
  wrong: (line: number, text: string, why: string) => `Line ${line}, “${text}”: ${why}`,
  twice: (line: number) => `The same code stands in line ${line}.`,
  unclear:
    'A comma here may part two answers or be a decimal one. Put tabs, semicolons or spaces between them.',
  added: (what: string) => `${what} added`,
};
