import { useEffect, useRef } from 'preact/hooks';

/** What browsers that read QR pictures have for it. */
interface Reader {
  detect(from: HTMLVideoElement): Promise<readonly { readonly rawValue: string }[]>;
}
type ReaderMaker = new (of: { formats: readonly string[] }) => Reader;

const maker = (): ReaderMaker | undefined => (globalThis as { BarcodeDetector?: ReaderMaker }).BarcodeDetector;

/** Whether this browser reads QR pictures and has a camera to ask for. */
export const readerHere = (): boolean => maker() !== undefined && navigator.mediaDevices !== undefined;

/** Looks so often, ms. */
const EVERY = 250;

/** The camera's picture while it looks for QR pictures; nothing of it is kept. */
export function Camera({ onRead, onRefused }: { onRead(text: string): void; onRefused(why: string): void }) {
  const video = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    let stream: MediaStream | undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    let gone = false;
    const begin = async (): Promise<void> => {
      try {
        stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' } });
      } catch {
        onRefused('The camera was not allowed, or there is none. Paste the texts of the pictures instead.');
        return;
      }
      const screen = video.current;
      if (gone || !screen) {
        for (const track of stream.getTracks()) track.stop();
        return;
      }
      screen.srcObject = stream;
      await screen.play();
      const reader = new (maker()!)({ formats: ['qr_code'] });
      const look = async (): Promise<void> => {
        if (gone) return;
        const found = await reader.detect(screen).catch(() => []);
        for (const { rawValue } of found) onRead(rawValue);
        timer = setTimeout(() => void look(), EVERY);
      };
      await look();
    };
    void begin();
    return () => {
      gone = true;
      clearTimeout(timer);
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, []);
  return <video ref={video} class="camera" muted playsInline aria-label="What the camera sees" />;
}
