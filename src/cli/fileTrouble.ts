/** What the system says when a file is refused, in words; codes as Node gives them. */
const WORDS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EEXIST: 'something of that name is there already',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is no folder',
  EACCES: 'it is not allowed',
  EPERM: 'it is not allowed',
  EROFS: 'the disk can only be read',
  ENOSPC: 'the disk is full',
  ERR_FS_FILE_TOO_LARGE: 'it is larger than 2 GB',
};

export function fileTrouble(e: unknown): string {
  const code = e instanceof Error && 'code' in e && typeof e.code === 'string' ? e.code : '';
  return WORDS[code] ?? (e instanceof Error ? e.message : String(e));
}
