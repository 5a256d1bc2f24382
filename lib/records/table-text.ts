/** Text of a table of readings, and how to call it in messages. */
export interface TableText {
  readonly text: string;
  /** `designs/meeting-table/stations.csv`. */
  readonly from: string;
}
