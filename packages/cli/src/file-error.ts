/** A file that could not be read or written, in words for the person who named it. */
export class FileError extends Error {
  override readonly name = 'FileError';
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'no such file or folder',
  EACCES: 'no permission',
  EISDIR: 'it is a folder',
  ENOTEMPTY: 'it is a folder',
  EBUSY: 'it is in use, or a folder',
  ENOTDIR: 'part of the path is not a folder',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links go round in a circle',
  EPERM: 'no permission',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
};

/** The reason in a system error, in plain words where they are known. */
export function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  return reasons[code] ?? error.message;
}
