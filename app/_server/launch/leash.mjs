/**
 * Loaded into the server before anything else. The server must not outlive the
 * program that started it, or it would hold the port: when the channel to that
 * program closes, even by `kill -9`, the server ends.
 */
process.on("disconnect", () => process.exit(1));
process.channel?.unref();
