/** Why nothing was printed: no window could be opened, or the one that was does not print. */
export type NotPrinted = 'blocked' | 'noPrint';

/** A page of its own in a window of its own, from where it is printed. Tells where that cannot be. */
export function openToPrint(html: string, onTrouble: (why: NotPrinted) => void): void {
  const url = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  const sheet = opened(url);
  if (sheet === null) {
    URL.revokeObjectURL(url);
    onTrouble('blocked');
    return;
  }
  sheet.addEventListener('load', () => {
    URL.revokeObjectURL(url);
    try {
      sheet.print();
    } catch {
      onTrouble('noPrint');
    }
  });
}

/** A page in a frame that may open none throws instead. */
function opened(url: string): Window | null {
  try {
    return open(url, '_blank');
  } catch {
    return null;
  }
}
