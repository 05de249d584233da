/** Everything that Pairlog says, in English. Every other language is a folder with the same files. */
export { about } from './about.ts';
export { glossary } from './glossary.ts';
export { fault } from './fault.ts';
export { phone } from './phone.ts';
export { file } from './file.ts';
export { care } from './care.ts';
export { entry } from './entry.ts';
export { join } from './join.ts';
export { talk } from './talk.ts';
export { propose } from './propose.ts';
export { own } from './own.ts';
export { notices } from './notices.ts';
export { fit } from './fit.ts';
export { desk } from './desk/index.ts';
export { terminal } from './terminal.ts';
