export function packageFolder(module: string): string | undefined;
export function noticesText(modules: Iterable<string>): string;
