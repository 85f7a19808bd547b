import { expect, test } from 'vitest';
import { startListening } from '../../../engine/study/index';
import { drawFlight } from '../physics/listening/draw';

const drawn = drawFlight(13);
const sound = { samples: drawn.sound(), rate: drawn.recording.rate };
const question = { about: drawn.about / 60, cycles: drawn.cycles };

/** A clock that goes on by 20 ms at every look: each step takes long. */
function listener() {
  let clock = 0;
  let rests = 0;
  const service = startListening({
    now: () => {
      clock += 20;
      return clock;
    },
    pause: async () => {
      rests += 1;
    },
  });
  return { service, rests: () => rests };
}

test('a sound is listened to with rests, and what is done is told', async () => {
  const { service, rests } = listener();
  const told: number[] = [];
  const heard = await service.listen(sound, question, (share) => told.push(share));
  expect(heard?.laps.length).toBeGreaterThan(0);
  expect(rests()).toBeGreaterThan(3);
  expect(told.length).toBeGreaterThan(1);
});

test('it ends when somebody ends it, and when another sound is asked for', async () => {
  const { service } = listener();
  const ended = service.listen(sound, question, () => {});
  await service.haltListening();
  expect(await ended).toBeUndefined();
  const [first, second] = await Promise.all([
    service.listen(sound, question, () => {}),
    service.listen({ samples: new Float32Array(10), rate: 8000 }, question, () => {}),
  ]);
  expect(first).toBeUndefined();
  expect(second?.turns).toBe('short');
});
