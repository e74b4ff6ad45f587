/** A page of its own in a window of its own, from where it is printed. */
export function openToPrint(html: string): void {
  const url = URL.createObjectURL(new Blob([html], { type: 'text/html' }));
  const sheet = open(url, '_blank');
  sheet?.addEventListener('load', () => {
    URL.revokeObjectURL(url);
    sheet.print();
  });
}
