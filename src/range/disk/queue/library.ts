/**
 * What is used of the queue's library and of the client that it speaks to Redis through. Loaded when a queue is asked for: the two
 * are a twentieth of all that annulet ships.
 */
export { Queue, QueueEvents, UnrecoverableError, WaitingError, Worker } from "bullmq";
export { Redis } from "ioredis";
