// SPDX-License-Identifier: MIT
// In the audio thread: hands the microphone's samples on, two blocks at a time.
class Listener extends AudioWorkletProcessor {
    constructor() {
        super();
        this.held = [];
        this.port.onmessage = ({ data: { port } }) => { this.to = port; };
    }
    process([[channel]]) {
        if (!channel || !this.to) return true;
        this.held.push(channel.slice());
        if (this.held.length === 2) {
            const samples = new Float32Array(2 * channel.length);
            samples.set(this.held[0]);
            samples.set(this.held[1], channel.length);
            this.held = [];
            this.to.postMessage({ samples, at: currentTime }, [samples.buffer]);
        }
        return true;
    }
}
registerProcessor("listener", Listener);
