/** What the server tells. */
export interface Listener {
  /** There is another page, which is about to take the place of this one. */
  onOther(): void;
  /** The design cannot be read at the moment, and why; undefined: it can again. */
  onBroken(why: string | undefined): void;
}

/** Listens to the server that the page came from, if one said where. The page and the server know its version. */
export function listenToServer({ onOther, onBroken }: Listener): void {
  const { events: address, version } = document.body.dataset;
  if (address === undefined) return;
  const events = new EventSource(address);
  events.addEventListener('page', ({ data }: MessageEvent<string>) => {
    onBroken(undefined);
    if (data === version) return;
    onOther();
    events.close();
    location.reload();
  });
  events.addEventListener('broken', ({ data }: MessageEvent<string>) => onBroken(JSON.parse(data)));
}
