/** @module The tablet's camera as a scanner: its picture, what it reads, and in words why there is none. */
import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import './home.css';
import { pixelsOf, readPicture } from './read-picture.ts';

const whyNot = (error: unknown): string => {
  const name = error instanceof DOMException ? error.name : '';
  if (name === 'NotAllowedError')
    return 'The browser was not allowed to use the camera. Allow it beside the address, and try again; or type the number on the tag.';
  if (name === 'NotFoundError' || name === 'OverconstrainedError')
    return 'This device has no camera that can be used. Choose a picture of the tag, or type its number.';
  if (name === 'NotReadableError')
    return 'Another program holds the camera. Close it and try again, or type the number on the tag.';
  return 'The camera does not start. Choose a picture of the tag, or type its number.';
};

const notHere =
  'A browser gives the camera only to pages of this very machine, or by https. Choose a picture of the tag, or type its number.';

/** Between two looks, milliseconds. */
const every = 120;

const lookAt = (video: HTMLVideoElement, onText: (text: string) => void): (() => void) => {
  let stopped = false;
  let timer = 0;
  const look = async () => {
    const pixels =
      video.videoWidth > 0
        ? pixelsOf(video, { width: video.videoWidth, height: video.videoHeight })
        : undefined;
    const text = pixels && (await readPicture(pixels, 'camera'));
    if (stopped) return;
    if (text !== undefined) onText(text);
    else timer = window.setTimeout(look, every);
  };
  void look();
  return () => {
    stopped = true;
    clearTimeout(timer);
  };
};

const Picture = ({
  onText,
  onTrouble,
}: {
  onText: (text: string) => void;
  onTrouble: (why: string) => void;
}) => {
  const video = useRef<HTMLVideoElement>(null);
  const told = useRef({ onText, onTrouble });
  useEffect(() => {
    told.current = { onText, onTrouble };
  });
  useEffect(() => {
    let stream: MediaStream | undefined;
    let stop = () => {};
    let gone = false;
    const begin = async () => {
      if (navigator.mediaDevices === undefined) return told.current.onTrouble(notHere);
      try {
        stream = await navigator.mediaDevices.getUserMedia({
          video: { facingMode: 'environment', width: { ideal: 1280 } },
          audio: false,
        });
        const shown = video.current;
        if (gone || shown === null) return;
        shown.srcObject = stream;
        await shown.play();
        stop = lookAt(shown, (text) => told.current.onText(text));
      } catch (error) {
        if (!gone) told.current.onTrouble(whyNot(error));
      } finally {
        if (gone) for (const track of stream?.getTracks() ?? []) track.stop();
      }
    };
    void begin();
    return () => {
      gone = true;
      stop();
      for (const track of stream?.getTracks() ?? []) track.stop();
    };
  }, []);
  return <video ref={video} className="camera" muted playsInline aria-label="What the camera sees" />;
};

/** Opened by a press, closed by the first code that it reads. */
export const Camera = ({ onText }: { readonly onText: (text: string) => void }) => {
  const [open, setOpen] = useState(false);
  const [trouble, setTrouble] = useState<string>();
  return (
    <div className="camera-scan">
      <Button
        onPress={() => {
          setTrouble(undefined);
          setOpen(!open);
        }}
      >
        {open ? 'Close the camera' : 'Scan with the camera'}
      </Button>
      {open ? (
        <Picture
          onText={(text) => {
            setOpen(false);
            onText(text);
          }}
          onTrouble={(why) => {
            setOpen(false);
            setTrouble(why);
          }}
        />
      ) : null}
      <p role="alert" className={trouble === undefined ? undefined : 'wrong'}>
        {trouble}
      </p>
    </div>
  );
};
