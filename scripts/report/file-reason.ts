const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'permission is denied',
  EBUSY: 'something else has it open',
  EEXIST: 'a file is in the way',
  EISDIR: 'it is a folder',
  ENAMETOOLONG: 'the name is too long',
  ENOENT: 'there is no such file or folder',
  ENOSPC: 'the disk is full',
  ENOTDIR: 'a file is in the way',
  EPERM: 'permission is denied',
  EROFS: 'the disk is read-only',
};

/** Why the system refused a file, in words; undefined for what is no refusal of the system. */
export function fileReason(error: unknown): string | undefined {
  if (!(error instanceof Error)) return undefined;
  const { code, syscall, message }: NodeJS.ErrnoException = error;
  if (code === undefined || syscall === undefined) return undefined;
  return REASONS[code] ?? message;
}
