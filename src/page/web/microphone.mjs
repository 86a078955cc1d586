// SPDX-License-Identifier: MIT
// The microphone, as 16 kHz samples to the listening worker. Nothing is kept unless a take is recorded.
import { script_url } from "./assets.mjs";
import { t } from "./messages.mjs";
import { started_worker } from "./module.mjs";

const rate = 16000; // analysis::measuring_rate; the browser converts

let worker = null, heard = () => {};
/** The worker that listens; `on_reading` gets {text | error, at}. */
export async function listening_worker(on_reading) {
    heard = on_reading;
    worker ??= started_worker((live) => heard(live));
    return worker;
}

/** What to say when it cannot be opened. */
export const microphone_trouble = (error) =>
    error.kind === "insecure" ? { wrong: t("mic_insecure"), remedy: t("mic_insecure_do") }
    : error.name === "NotAllowedError" ? { wrong: t("mic_denied"), remedy: t("mic_denied_do") }
    : error.name === "NotFoundError" ? { wrong: t("mic_missing"), remedy: "" } : error;

/** Opens the microphone; answers {stop, context, unwilling}: filters that the device would not switch off. */
export async function open_microphone(ask) {
    if (!navigator.mediaDevices?.getUserMedia) throw { wrong: "no microphone", kind: "insecure" };
    const wished = { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 };
    const stream = await navigator.mediaDevices.getUserMedia({ audio: wished });
    const set = stream.getAudioTracks()[0].getSettings();
    const unwilling = ["echoCancellation", "noiseSuppression", "autoGainControl"].filter((name) => set[name]);
    const context = new AudioContext({ sampleRate: rate, latencyHint: "interactive" });
    await context.audioWorklet.addModule(script_url("listener.js"));
    const node = new AudioWorkletNode(context, "listener", { numberOfOutputs: 0 });
    const { port1, port2 } = new MessageChannel();
    node.port.postMessage({ port: port1 }, [port1]);
    await ask("listen", { port: port2 }, undefined, [port2]);
    context.createMediaStreamSource(stream).connect(node);
    await context.resume();
    return {
        context, unwilling, label: stream.getAudioTracks()[0].label,
        device_rate: set.sampleRate ?? 48000,
        async stop() {
            for (const track of stream.getTracks()) track.stop();
            await context.close();
        },
    };
}
