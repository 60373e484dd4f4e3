// How panels come onto the picture: the toolkit's colors and textures, with as little to work out for a pixel as can be.
// Colors become linear at the corners; the toolkit's own shader does so for every pixel, by six powers.
// A texture's share of a color is taken of linear values; whole and no share are the same, so that only soft edges differ, by little.

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

// IEC 61966-2-1, from memory.
fn linear(encoded: vec3<f32>) -> vec3<f32> {
    let low = encoded / 12.92;
    let high = pow((encoded + 0.055) / 1.055, vec3<f32>(2.4));
    return select(high, low, encoded < vec3<f32>(0.04045));
}

@vertex
fn vs_main(corner: Corner) -> Inked {
    let position = corner.position * transform.scale + transform.translation;
    let color = vec4<f32>(linear(corner.color.rgb), corner.color.a);
    return Inked(vec4<f32>(position, 0.0, 1.0), color, corner.uv);
}

@fragment
fn fs_main(inked: Inked) -> @location(0) vec4<f32> {
    return inked.color * textureSample(image_texture, image_sampler, inked.uv);
}
