/** What is wrong and by how much, then what to do now. */
export interface Said {
  text: string;
  hint: string;
}
