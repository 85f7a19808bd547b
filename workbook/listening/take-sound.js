// Runs where the browser handles sound: hands over what comes in, piece by piece, and keeps nothing.
const PIECE = 4096;

class TakeSound extends AudioWorkletProcessor {
  constructor() {
    super();
    this.piece = new Float32Array(PIECE);
    this.filled = 0;
  }

  process([input]) {
    const channel = input?.[0];
    if (!channel) return true;
    this.piece.set(channel, this.filled);
    this.filled += channel.length;
    if (this.filled >= PIECE) {
      this.port.postMessage(this.piece);
      this.filled = 0;
    }
    return true;
  }
}

registerProcessor('take-sound', TakeSound);
