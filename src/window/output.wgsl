// The finished picture, pixel by pixel, its encoded colors made linear for a target that encodes them again.
// The polynomial is our own fit to the transfer function of IEC 61966-2-1 (from memory); a test holds it to each of its 256 steps.

@group(0) @binding(0) var in_texture: texture_2d<f32>;
@group(0) @binding(1) var in_sampler: sampler;

fn linear(c: vec3<f32>) -> vec3<f32> {
    return c * (0.07128071 + c * (0.04014977 + c * (3.022484 + c * (-5.502983 + c * (5.263968 - c * 1.8973669)))));
}

@fragment
fn fs_main(@builtin(position) at: vec4<f32>) -> @location(0) vec4<f32> {
    let encoded = textureLoad(in_texture, vec2<i32>(at.xy), 0);
    return vec4<f32>(linear(encoded.rgb), encoded.a);
}
