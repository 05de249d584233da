export const audit = {
  title: 'Who did what',
  hint: 'Who came in, who was signed out, who invited whom. What somebody logged stands nowhere in it.',
  show: 'Show',
  when: 'When',
  who: 'Who',
  what: 'What',
  lead: 'lead or specialist',
  deeds: {
    join: 'came in',
    return: 'came back on a cleared device',
    renew: 'renewed a token',
    invite: 'invited:',
    revoke: 'signed out device',
  },
};
