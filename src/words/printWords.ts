/** Why a page was not printed, and the way out that stands beside it. */
export const PRINT_WORDS = {
  blocked:
    'The browser did not let a window be opened to print from. Allow it for this page and try again, or save the page as a file and print that.',
  noPrint:
    'This browser did not print the page. Print it from the menu of its window, or save it as a file and print that.',
  save: 'Save it as a file',
} as const;
