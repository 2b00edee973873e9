// @ts-check
/** Loaded into the server before anything else: every server made afterwards has the door before it. */
import http from "node:http";
import { withDoor } from "./door.mjs";

/** @typedef {import("node:http").RequestListener} Listener */

const createServer = http.createServer;
http.createServer = /** @type {typeof http.createServer} */ (
  (/** @type {unknown[]} */ ...given) =>
    Reflect.apply(
      createServer,
      http,
      given.map((each) => (typeof each === "function" ? withDoor(/** @type {Listener} */ (each)) : each)),
    )
);
