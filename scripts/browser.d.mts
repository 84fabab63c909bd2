export function findBrowser(): string | null;
export function quietFlags(): string[];
