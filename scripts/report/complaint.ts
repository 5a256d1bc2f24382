/** What can be wrong besides the parameters: the command line, files, designs, folders. A closed union. */
export type ComplaintCode =
  | 'unknown-command'
  | 'unknown-option'
  | 'option-not-here'
  | 'value-missing'
  | 'value-not-wanted'
  | 'given-twice'
  | 'not-a-choice'
  | 'needs-option'
  | 'not-beside'
  | 'wrong-ending'
  | 'design-missing'
  | 'too-many-arguments'
  | 'unknown-design'
  | 'one-design-only'
  | 'same-folder'
  | 'file-unreadable'
  | 'not-json'
  | 'design-broken'
  | 'compose-broken'
  | 'blocked'
  | 'not-writable'
  | 'port-taken'
  | 'not-ours'
  | 'outside'
  | 'bug';

/** Data only, as an `Issue` is; the sentence is made by `renderComplaint`. */
export interface Complaint {
  readonly code: ComplaintCode;
  /** What came, as typed: an option, a value, a path. */
  readonly given: string;
  /** What it came for: a command, an option or a design. */
  readonly subject: string;
  readonly because?: string | undefined;
  /** What there is to choose from. */
  readonly options?: readonly string[] | undefined;
  readonly didYouMean?: string | undefined;
  /** What to type instead. */
  readonly try?: string | undefined;
}
