//! The street scene: three layers of meshes, painted anew when a view, the window's size or the light has changed.
//!
//! Backdrop: sky, line, house, yard. Moving things: appliances, people, generator. Conductors lie on top.
//! What stands is painted once for where a glide ends; on the way there it is carried by a transform.
//! Words are not painted here: see [`callouts`], which shares the plan.
//! What part of the street is seen: see [`sight`].

mod appliances;
mod branches;
mod brush;
pub(super) mod callouts;
mod calls;
mod coverage;
mod devices;
mod equipment;
pub(super) mod frame;
pub(super) mod goal;
mod hall;
mod house;
mod inside;
pub(crate) mod legend;
mod measure;
mod neighbors;
mod openings;
mod paint;
mod people;
mod plan;
mod pointers;
mod reach;
mod rooms;
mod routes;
pub(super) mod sight;
mod sizes;
mod sky;
mod street;
mod taken;
mod things;
mod wires;
mod yard;

use bevy::camera::{CameraMainTextureUsages, ScalingMode};
use bevy::prelude::*;
use bevy::render::camera::CameraRenderGraph;
use bevy::render::render_resource::TextureUsages;

use crate::session::view::{
    ApplianceKind, ApplianceState, ApplianceView, GeneratorView, Room, StandView, StreetView,
};

use super::WindowSystems;
use super::desk::Desk;
use super::link::{Pulse, Views};
use super::output::SPACE;
use super::painting::{MOVING, Painting};
use super::theme;

use brush::{Brush, Part};
use frame::{Frame, Look};
use paint::{Kind, Paint};
use plan::Plan;
use sight::Sight;

/// Size of the picture that is drawn into, logical pixels.
#[derive(Resource, Debug, Clone, Copy, PartialEq)]
pub(super) struct Surface(pub(super) Vec2);

/// The plan and frame of what is drawn now, for words and rings.
#[derive(Resource, Debug, Clone)]
pub(super) struct Drawn {
    pub(super) plan: Plan,
    pub(super) frame: Frame,
}

impl Drawn {
    /// What is seen of a street, or of the street beside the shelf, in a window of this size.
    pub(super) fn of(views: &Views, desk: &Desk, size: Vec2) -> Self {
        match &views.street {
            Some(street) => {
                let plan = Plan::new(street);
                let look = desk.look();
                let frame = Frame::new(size, look);
                let frame = if look.second && desk.again.is_none() {
                    frame.below(goal::band_height(street, size.x / look.zoom))
                } else {
                    frame
                };
                let told = told(views, desk, &plan).map(Sight::of_stage);
                let told = told.or_else(|| frame.close_up(place_at(desk, &plan)?));
                let frame = frame.at(desk.outlook.sight(told));
                let frame = if views.from_right {
                    frame.at_the_right()
                } else {
                    frame
                };
                Self { plan, frame }
            }
            None => Self {
                plan: Plan::new(&shelf_street()),
                frame: Frame::beside(size, views.from_right),
            },
        }
    }
}

/// The point of the plan that a consequence tells of now.
fn told(views: &Views, desk: &Desk, plan: &Plan) -> Option<Vec2> {
    let consequence = views.consequence.as_ref()?;
    let stage = consequence.stages.get(desk.stage)?;
    plan.anchors.get(&stage.at).copied()
}

/// Where the place is that is open as a close view.
fn place_at(desk: &Desk, plan: &Plan) -> Option<Vec2> {
    let place = desk.place.as_deref()?;
    let id = match place {
        "generator" => "generator",
        "line" => "transformer",
        _ => "house",
    };
    plan.anchors.get(id).copied()
}

/// How far marks go along a conductor, plan units a second.
const MARKS_A_SECOND: f32 = 26.0;

/// Whether the scene is on its way to what is to be seen.
#[derive(Resource, Debug, Default)]
pub(super) struct Glide(pub(super) bool);

/// The frame in which what stands is painted: where the scene glides to.
#[derive(Resource, Debug)]
struct Goal(Frame);

/// A layer of what stands.
#[derive(Component)]
struct Stands;

/// Where the meshes are.
#[derive(Resource)]
struct Layers {
    backdrop: [Handle<Mesh>; 2],
    things: [Handle<Mesh>; 2],
    conductors: [Handle<Mesh>; 2],
    moving: [Handle<Mesh>; 2],
    /// The street beside the shelf, drawn while no other is open.
    shelf: StreetView,
}

impl Layers {
    /// The street that is drawn.
    fn street<'a>(&'a self, views: &'a Views) -> &'a StreetView {
        views.street.as_ref().unwrap_or(&self.shelf)
    }
}

/// Puts what a brush has painted in the place of what a layer showed.
fn lay(meshes: &mut Assets<Mesh>, layer: &[Handle<Mesh>; 2], brush: Brush) -> Result {
    for (handle, mesh) in layer.iter().zip(brush.finish()) {
        meshes.insert(handle, mesh)?;
    }
    Ok(())
}

pub(super) fn plugin(app: &mut App) {
    let size = Vec2::new(1280.0, 720.0);
    app.add_plugins(paint::plugin)
        .insert_resource(Surface(size))
        .init_resource::<Glide>()
        .insert_resource(Drawn {
            plan: Plan::default(),
            frame: Frame::new(size, Look::default()),
        })
        .insert_resource(Goal(Frame::new(size, Look::default())))
        .add_systems(Startup, set_up)
        .add_systems(
            Update,
            (
                measure,
                place.run_if(
                    resource_changed::<Views>
                        .or_else(resource_changed::<Surface>)
                        .or_else(resource_changed::<Desk>)
                        .or_else(|glide: Res<'_, Glide>| glide.0),
                ),
                (backdrop, standing).run_if(resource_changed::<Goal>),
                carry.run_if(resource_changed::<Drawn>),
                moving.run_if(resource_changed::<Drawn>.or_else(resource_changed::<Pulse>)),
            )
                .chain()
                .in_set(WindowSystems::Draw),
        );
}

fn set_up(
    mut commands: Commands<'_, '_>,
    mut meshes: ResMut<'_, Assets<Mesh>>,
    mut paints: ResMut<'_, Assets<Paint>>,
) {
    let mut kind = |kind| paints.add(Paint { kind });
    let (ground, moving, soft) = (kind(Kind::Ground), kind(Kind::Moving), kind(Kind::Soft));
    let mut layer = |part: Part, z: f32, solid: &Handle<Paint>| {
        let nothing = Brush::new(Frame::new(Vec2::splat(100.0), Look::default()), part);
        let nothing = nothing.finish().map(|mesh| meshes.add(mesh));
        for (mesh, paint) in nothing.iter().zip([solid, &soft]) {
            let mut layer = commands.spawn((
                Mesh2d(mesh.clone()),
                MeshMaterial2d(paint.clone()),
                Transform::from_xyz(0.0, 0.0, z),
                bevy::camera::visibility::NoFrustumCulling,
            ));
            if part == Part::Standing {
                layer.insert(Stands);
            }
        }
        nothing
    };
    let layers = Layers {
        backdrop: layer(Part::Standing, 0.0, &ground),
        things: layer(Part::Standing, 1.0, &ground),
        conductors: layer(Part::Standing, 2.0, &ground),
        moving: layer(Part::Moving, MOVING, &moving),
        shelf: shelf_street(),
    };
    commands.insert_resource(layers);
}

/// The one camera: scene and panels share it, which saves the software adapter a pass over every pixel.
pub(super) fn camera() -> impl Bundle {
    (
        Camera2d,
        Msaa::Off,
        SPACE,
        CameraRenderGraph::new(Painting),
        CameraMainTextureUsages::default().with(TextureUsages::COPY_DST),
        Projection::Orthographic(OrthographicProjection {
            scaling_mode: ScalingMode::WindowSize,
            // Four layers, each one deep: shapes a little nearer than each other are told apart.
            near: -5.0,
            far: 1.0,
            ..OrthographicProjection::default_2d()
        }),
    )
}

fn measure(
    cameras: Query<'_, '_, &Camera>,
    mut surface: ResMut<'_, Surface>,
    mut desk: ResMut<'_, Desk>,
) {
    let size = cameras.iter().find_map(Camera::logical_target_size);
    let Some(size) = size.filter(|size| size.min_element() >= 1.0) else {
        return;
    };
    if surface.0 != size {
        surface.0 = size;
    }
    if desk.window != size {
        desk.window = size;
    }
}

/// Places everything, and glides to what is to be seen unless motion is off.
fn place(
    (views, desk, surface): (Res<'_, Views>, Res<'_, Desk>, Res<'_, Surface>),
    time: Res<'_, Time>,
    mut drawn: ResMut<'_, Drawn>,
    (mut glide, mut goal): (ResMut<'_, Glide>, ResMut<'_, Goal>),
) {
    let was = drawn.frame;
    *drawn = Drawn::of(&views, &desk, surface.0);
    if views.is_changed() || desk.is_changed() || goal.0 != drawn.frame {
        goal.0 = drawn.frame;
    }
    glide.0 = false;
    if !desk.still && !desk.outlook.is_held() && was.same_room(&goal.0) {
        let seconds = time.delta_secs().min(0.1);
        let (sight, arrived) = was.sight().toward(goal.0.sight(), seconds);
        drawn.frame = goal.0.at(sight);
        glide.0 = !arrived;
    }
}

/// Carries what stands from where a glide ends to where it is now.
fn carry(
    goal: Res<'_, Goal>,
    drawn: Res<'_, Drawn>,
    mut layers: Query<'_, '_, &mut Transform, With<Stands>>,
) {
    let (size, to) = goal.0.carried(&drawn.frame);
    for mut layer in &mut layers {
        layer.scale = Vec3::new(size, size, 1.0);
        layer.translation = to.extend(layer.translation.z);
    }
}

fn backdrop(
    views: Res<'_, Views>,
    layers: Res<'_, Layers>,
    (goal, drawn): (Res<'_, Goal>, Res<'_, Drawn>),
    mut meshes: ResMut<'_, Assets<Mesh>>,
) -> Result {
    let street = layers.street(&views);
    let light = light(street);
    let mut brush = Brush::new(goal.0, Part::Standing);
    sky::paint(&mut brush, light, street.storm);
    street::paint(&mut brush, street, &drawn.plan, light);
    yard::paint(&mut brush, &drawn.plan, light);
    house::paint(&mut brush, street, &drawn.plan, light);
    equipment::on_roof(&mut brush, &drawn.plan, light);
    yard::haze(&mut brush, street, &drawn.plan);
    lay(&mut meshes, &layers.backdrop, brush)
}

/// The light of the hour, under clouds when there is a storm.
fn light(street: &StreetView) -> theme::Light {
    let light = theme::light(street.minute_of_day);
    if street.storm { light.stormy() } else { light }
}

/// Things and conductors, as far as they stand.
fn standing(
    views: Res<'_, Views>,
    layers: Res<'_, Layers>,
    (goal, drawn): (Res<'_, Goal>, Res<'_, Drawn>),
    mut meshes: ResMut<'_, Assets<Mesh>>,
) -> Result {
    let street = layers.street(&views);
    let mut brush = Brush::new(goal.0, Part::Standing);
    things(&mut brush, street, &drawn.plan, 0.0);
    lay(&mut meshes, &layers.things, brush)?;
    let mut brush = Brush::new(goal.0, Part::Standing);
    wires::paint(&mut brush, street, &drawn.plan, 0.0);
    lay(&mut meshes, &layers.conductors, brush)
}

/// What of them moves.
fn moving(
    views: Res<'_, Views>,
    pulse: Res<'_, Pulse>,
    desk: Res<'_, Desk>,
    layers: Res<'_, Layers>,
    drawn: Res<'_, Drawn>,
    mut meshes: ResMut<'_, Assets<Mesh>>,
) -> Result {
    let street = layers.street(&views);
    let turn = pulse.turn_s;
    let mut brush = Brush::new(drawn.frame, Part::Moving);
    things(&mut brush, street, &drawn.plan, turn);
    wires::paint(&mut brush, street, &drawn.plan, turn * MARKS_A_SECOND);
    if let Some(at) = told(&views, &desk, &drawn.plan) {
        let person = told_of_person(&views, &desk);
        let wide = if person { 24.0 } else { 0.0 };
        brush.moving(true, |brush| ring(brush, at, wide, turn));
    }
    lay(&mut meshes, &layers.moving, brush)
}

/// Paints equipment, appliances, generator and people; `turn` goes round while something moves.
fn things(brush: &mut Brush, street: &StreetView, plan: &Plan, turn: f32) {
    equipment::paint(brush, street, plan);
    appliances::paint(brush, street, plan, turn);
    yard::generator(brush, street, plan, turn);
    people::paint(brush, street, plan, light(street));
}

/// Whether the stage that is told now is a person: a ring lies around all of them, and hides nothing.
fn told_of_person(views: &Views, desk: &Desk) -> bool {
    let consequence = views.consequence.as_ref();
    let stage = consequence.and_then(|c| c.stages.get(desk.stage));
    let mut people = views.street.iter().flat_map(|street| &street.people);
    stage.is_some_and(|stage| people.any(|person| person.id == stage.at))
}

/// The ring that says "here": two circles, so that it is no mark of anything else.
fn ring(brush: &mut Brush, at: Vec2, wide: f32, turn: f32) {
    let swell = wide + (turn * 2.5).sin() * 2.0;
    brush.ring(at, 30.0 + swell, 7.0, theme::INK.alpha(0.7));
    brush.ring(at, 30.0 + swell, 4.0, theme::PURPLE);
    brush.ring(at, 39.0 + swell, 2.0, theme::CREAM);
}

/// The street beside the shelf: an evening before anything has happened.
fn shelf_street() -> StreetView {
    let thing = |(id, kind, room): (&str, ApplianceKind, Room)| ApplianceView {
        id: id.to_owned(),
        kind,
        room,
        state: ApplianceState::Running,
        glow: 1.0,
        ..ApplianceView::default()
    };
    let stand = |id: &str, room, store| StandView {
        id: id.to_owned(),
        room,
        store,
        ..StandView::default()
    };
    StreetView {
        minute_of_day: 19 * 60,
        appliances: [
            ("kitchen-lights", ApplianceKind::Lamp, Room::Kitchen),
            ("bedroom-lights", ApplianceKind::Lamp, Room::Bedroom),
            ("fridge", ApplianceKind::Fridge, Room::Kitchen),
            ("furnace", ApplianceKind::Furnace, Room::Basement),
            ("television", ApplianceKind::Television, Room::Living),
        ]
        .map(thing)
        .to_vec(),
        generator: GeneratorView {
            place: "shed".to_owned(),
            stands: vec![
                stand("shed", Room::Outside, true),
                stand("garage", Room::Garage, false),
            ],
            ..GeneratorView::default()
        },
        ..StreetView::default()
    }
}
