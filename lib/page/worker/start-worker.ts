/** A worker that runs a script, that of the page itself; undefined where a browser lets none start. */
export function startWorker<A>(script: string, hear: (answer: A) => void): Worker | undefined {
  try {
    const url = URL.createObjectURL(new Blob([script], { type: 'text/javascript' }));
    const worker = new Worker(url);
    worker.onmessage = ({ data }: MessageEvent<A>) => hear(data);
    return worker;
  } catch {
    return undefined;
  }
}
