//! What is painted in part against what is painted whole, bit for bit.
//!
//! It is compiled into the tests of `src/window/picture.rs`, because an engine without a window is nobody else's to drive.
//! It does not cover pictures that come late from a display's own pipelines: without a window there is nothing to wait for.

use bevy::prelude::DetectChangesMut as _;
use bevy::render::RenderApp;
use image::RgbImage;

use super::*;
use crate::file::Library;
use crate::window::desk::Desk;
use crate::window::gallery;
use crate::window::link::{Pulse, Views};
use crate::window::painting::Kept;
use crate::window::scene::Glide;

/// Seconds of motion of the frames that are painted before a picture is taken.
const MOTION: [f32; 3] = [0.21, 0.5, 1.34];

impl Studio {
    /// One whose first picture, which waits for what reads it back, has been taken.
    fn shipped(size: (u32, u32)) -> Self {
        let mut studio = Self::new(shipped(), size, probe().expect("there is an adapter"));
        studio.taken();
        studio
    }

    fn begin_shipped(&mut self, wishes: &[Wish]) {
        self.begin(shipped());
        self.play(wishes);
    }

    /// Whether the frame before was painted in part.
    fn was_in_part(&self) -> bool {
        let render = self.app.sub_app(RenderApp).world();
        render.resource::<Kept>().in_part()
    }

    fn move_to(&mut self, turn_s: f32) {
        self.app.world_mut().resource_mut::<Pulse>().turn_s = turn_s;
        self.frame();
    }

    /// Whether what is around the room stayed as it was in the frame before.
    fn was_in_room(&self) -> bool {
        let render = self.app.sub_app(RenderApp).world();
        render.resource::<Kept>().in_room()
    }

    /// The picture, as it comes.
    fn taken(&mut self) -> RgbImage {
        self.capture(|_| {}).expect("a picture is read back")
    }

    /// The picture, every frame painted whole.
    fn whole(&mut self) -> RgbImage {
        let change = |world: &mut World| world.resource_mut::<Views>().set_changed();
        let whole = self.capture(change).expect("a picture is read back");
        assert!(!self.was_in_part());
        whole
    }
}

fn shipped() -> Session {
    let (library, faults) = Library::shipped();
    assert!(faults.is_empty(), "{faults:?}");
    Session::new(library, "en").asking()
}

#[test]
fn what_is_painted_in_part_while_things_move_is_the_whole_picture() {
    let mut studio: Option<Studio> = None;
    let mut wrong = Vec::new();
    for Picture { name, wishes, size } in gallery::screens() {
        let studio = match studio.take_if(|studio| studio.size != size) {
            Some(_) => studio.insert(Studio::shipped(size)),
            None => studio.get_or_insert_with(|| Studio::shipped(size)),
        };
        studio.begin_shipped(&wishes);
        for turn_s in MOTION {
            studio.move_to(turn_s);
            assert!(studio.was_in_part(), "{name}");
        }
        let part = studio.taken();
        assert!(studio.was_in_part(), "{name}");
        let whole = studio.whole();
        let pairs = part.pixels().zip(whole.pixels());
        let differ = pairs.filter(|(one, other)| one != other).count();
        if differ > 0 {
            wrong.push(format!("{name}: {differ} pixels"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:?}");
}

#[test]
fn a_change_between_moving_frames_leaves_nothing_of_the_picture_before() {
    let screens = gallery::screens();
    let fed = screens.iter().find(|s| s.name == "line-fed-first");
    let Picture { wishes, size, .. } = fed.expect("the screen is there");
    let mut studio = Studio::shipped(*size);
    studio.begin_shipped(wishes);
    let mut before = None;
    for change in [
        Wish::Stage(1),
        Wish::Size(true),
        Wish::See(gallery::near("house")),
    ] {
        studio.play(std::slice::from_ref(&change));
        studio.move_to(MOTION[0]);
        let now = studio.taken();
        assert!(studio.was_in_part(), "{change:?}");
        assert!(now == studio.whole(), "{change:?}");
        assert!(before.replace(now.clone()) != Some(now), "{change:?}");
        // What comes next finds a picture that was painted in part.
        studio.play(&[]);
        studio.move_to(MOTION[1]);
        assert!(studio.was_in_part(), "{change:?}");
    }
}

#[test]
fn things_move_in_a_picture_that_is_painted_in_part() {
    let screens = gallery::screens();
    let fed = screens.iter().find(|s| s.name == "line-fed-first");
    let Picture { wishes, size, .. } = fed.expect("the screen is there");
    let mut studio = Studio::shipped(*size);
    studio.begin_shipped(wishes);
    let one = studio.taken();
    studio.move_to(MOTION[1]);
    let other = studio.taken();
    assert!(studio.was_in_part());
    assert!(one != other);
}

#[test]
fn a_glide_paints_the_room_alone_and_ends_as_the_whole_picture() {
    let screens = gallery::screens();
    let fed = screens.iter().find(|s| s.name == "line-fed-first");
    let Picture { wishes, size, .. } = fed.expect("the screen is there");
    let mut studio = Studio::shipped(*size);
    studio.begin_shipped(wishes);
    let before = studio.taken();
    // Motion is off in pictures, as they are taken at once.
    studio.app.world_mut().resource_mut::<Desk>().still = false;
    let see = Wish::See(gallery::near("house"));
    studio.app.world_mut().write_message(see);
    let mut frames = 0;
    let mut in_room = 0;
    loop {
        studio.frame();
        frames += 1;
        in_room += usize::from(studio.was_in_room() && !studio.was_in_part());
        let glides = studio.app.world().resource::<Glide>().0;
        if !glides && frames > 1 {
            break;
        }
        assert!(frames < 5_000, "a glide ends");
    }
    assert!(
        in_room > 0,
        "of {frames} frames none painted the room alone"
    );
    studio.app.world_mut().resource_mut::<Desk>().still = true;
    studio.move_to(MOTION[0]);
    let now = studio.taken();
    assert!(now != before && now == studio.whole());
}
