//! Electrical engineering, one device to a file: what a thing is rated for and how it behaves.
//!
//! Pure models: numbers in, numbers out, no network and no clock.
//! Whatever changes with time has a closed form, so that advancing by *a* and then by *b* lands where *a + b* does, but for rounding.
//! Tables carry the standard and section they come from, and whether the figure was checked in a copy or is from memory.
//! Figures that no publication gives are named as assumptions where they stand.

pub mod branch_wire;
pub mod conductor;
pub mod conductor_heat;
pub mod line;

pub mod transformer;

pub mod ampacity;
pub mod breaker;
pub mod fuse;
pub mod gfci;
pub mod guard;
pub mod inverse_time;

pub mod connection;
pub mod cord;
pub mod cord_choice;
pub mod cord_damage;
pub mod cord_lay;
pub mod cord_letters;
pub mod insulation;

pub mod motor;
pub mod motor_start;
pub mod motor_voltage;

pub mod household;
pub mod resistive;
pub mod tolerance;

pub mod fuel;
pub mod generator;

pub mod conventional;
pub mod inverter;
pub mod standby;
pub mod waveform;

pub mod interconnection;

pub mod solar;

pub mod battery;

pub mod backpower;

pub mod closing;

pub mod auto_transfer;
mod auto_transfer_steps;
pub mod auto_transfer_story;
pub mod transfer_timers;
