// What a brush has painted: each corner's own color, and nothing else to work out for a pixel.
// Colors run straight across the screen, as nothing here is seen in perspective.

#import bevy_sprite::mesh2d_functions as mesh

struct Corner {
    @builtin(instance_index) instance: u32,
    @location(0) position: vec3<f32>,
    @location(4) color: vec4<f32>,
};

struct Painted {
    @builtin(position) position: vec4<f32>,
    @location(0) @interpolate(linear) color: vec4<f32>,
};

@vertex
fn vertex(corner: Corner) -> Painted {
    var painted: Painted;
    let world_from_local = mesh::get_world_from_local(corner.instance);
    painted.position = mesh::mesh2d_position_local_to_clip(world_from_local, vec4<f32>(corner.position, 1.0));
    painted.color = corner.color;
    return painted;
}

@fragment
fn fragment(painted: Painted) -> @location(0) vec4<f32> {
    return painted.color;
}
