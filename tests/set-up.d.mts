export function setUpSystem(): Record<string, string | undefined>;
