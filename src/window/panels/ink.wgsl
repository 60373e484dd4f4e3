// How panels come onto the picture: the toolkit's colors and the coverage of its letters, with as little to work out for a pixel as can be.
// The picture is put together in encoded colors, which is what the toolkit's are.

struct Transform {
    scale: vec2<f32>,
    translation: vec2<f32>,
}

struct Corner {
    @location(0) position: vec2<f32>,
    @location(1) uv: vec2<f32>,
    @location(2) color: vec4<f32>,
}

struct Inked {
    @builtin(position) position: vec4<f32>,
    @location(0) @interpolate(linear) color: vec4<f32>,
    @location(1) @interpolate(linear) uv: vec2<f32>,
}

@group(0) @binding(0) var<uniform> transform: Transform;
@group(1) @binding(0) var image_texture: texture_2d<f32>;
@group(1) @binding(1) var image_sampler: sampler;

@vertex
fn vs_main(corner: Corner) -> Inked {
    let position = corner.position * transform.scale + transform.translation;
    return Inked(vec4<f32>(position, 0.0, 1.0), corner.color, corner.uv);
}

@fragment
fn fs_main(inked: Inked) -> @location(0) vec4<f32> {
    return inked.color * textureSample(image_texture, image_sampler, inked.uv).a;
}
