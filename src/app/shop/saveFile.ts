/** Puts a file among the user's downloads. */
export function saveFile(file: Blob, name: string): void {
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser reads it after the click; a minute is long enough to begin with the largest.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
