export const group = {
  devices: 'Devices',
  device: 'Device',
  role: 'Role',
  seen: 'Last seen',
  revoke: 'Sign out',
  revoked: 'signed out',
  inviteLead: 'Invite another lead',
  inviteSpecialist: 'Invite a specialist',
  specialistHint:
    'A specialist of the factory reads findings, and the quotes and reports that you send, and nothing else.',
  files: 'Files',
  exportAll: 'Save the whole log as a file',
  specialistFile: 'File for a specialist',
  specialistFileHint:
    'For a specialist without the hub: the findings, with their photos, and what you sent. One file for one person: it makes the device that opens it theirs. They send their answers back as a file.',
  open: 'Open a file',
  noHub: 'This group works by files: no hub.',
  sync: 'Sync now',
};
