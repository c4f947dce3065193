/**
 * The shaders of stones. A stone's own axes come with each instance; light is followed in its own coordinates.
 */

export const GEM_VERTEX = `
varying vec3 vAt;
varying vec3 vWay;
varying vec3 vNormal;
varying vec3 vX;
varying vec3 vY;
varying vec3 vZ;
void main() {
  mat4 place = modelMatrix * instanceMatrix;
  vX = place[0].xyz;
  vY = place[1].xyz;
  vZ = place[2].xyz;
  vec4 world = place * vec4(position, 1.0);
  vec3 way = isOrthographic ? -vec3(viewMatrix[0][2], viewMatrix[1][2], viewMatrix[2][2]) : world.xyz - cameraPosition;
  vWay = vec3(dot(way, vX), dot(way, vY), dot(way, vZ));
  vAt = position;
  vNormal = normal;
  gl_Position = projectionMatrix * viewMatrix * world;
}`;

/** Mirrorings that are followed, and the light of what is left then. Chosen by eye beside the pictures. */
const BOUNCES = 4;

export const GEM_FRAGMENT = `
uniform sampler2D studio;
uniform float turned;
uniform vec3 colour;
uniform float index;
uniform float width;
uniform vec3 metal;
varying vec3 vAt;
varying vec3 vWay;
varying vec3 vNormal;
varying vec3 vX;
varying vec3 vY;
varying vec3 vZ;
#ifdef TRACED
uniform vec4 planes[PLANES];
#endif

/* The studio in a direction of the stone's own axes: its map is equirectangular, its front towards the reader. */
vec3 studioLight(vec3 own) {
  vec3 way = own.x * vX + own.y * vY + own.z * vZ;
  float turnedCos = cos(turned);
  float turnedSin = sin(turned);
  vec2 level = vec2(turnedCos * way.x - turnedSin * way.z, turnedSin * way.x + turnedCos * way.z);
  vec2 at = vec2(atan(level.y, level.x) / 6.2831853 + 0.5, asin(clamp(way.y, -1.0, 1.0)) / 3.1415927 + 0.5);
  return textureLod(studio, at, 0.0).rgb;
}

/* What comes in from a direction: the studio, or from below the metal that holds the stone. */
vec3 outside(vec3 way) {
  return mix(metal, studioLight(way), smoothstep(-0.3, 0.05, way.z));
}

/* Share that a surface mirrors, by Fresnel's equations. */
float mirrored(float cosOutside, float cosInside) {
  float across = (cosOutside - index * cosInside) / (cosOutside + index * cosInside);
  float along = (index * cosOutside - cosInside) / (index * cosOutside + cosInside);
  return 0.5 * (across * across + along * along);
}

#ifdef TRACED
vec3 inside(vec3 at, vec3 way, float share) {
  vec3 left = vec3(share);
  vec3 sum = vec3(0.0);
  for (int bounce = 0; bounce < ${BOUNCES}; bounce++) {
    float reach = 1e6;
    vec3 plane = vec3(0.0, 0.0, 1.0);
    for (int i = 0; i < PLANES; i++) {
      vec4 one = planes[i];
      float towards = dot(one.xyz, way);
      float far = (one.w - dot(one.xyz, at)) / max(towards, 1e-6);
      if (towards > 1e-5 && far < reach) {
        reach = far;
        plane = one.xyz;
      }
    }
    reach = clamp(reach, 0.0, 3.0 * width);
    at += reach * way;
    left *= pow(colour, vec3(reach / width));
    float cosInside = dot(way, plane);
    float square = 1.0 - index * index * (1.0 - cosInside * cosInside);
    if (square > 0.0) {
      float cosOutside = sqrt(square);
      float stays = mirrored(cosOutside, cosInside);
      sum += left * (1.0 - stays) * outside(index * way + (cosOutside - index * cosInside) * plane);
      left *= stays;
    }
    way -= 2.0 * cosInside * plane;
  }
  return sum + left * outside(way);
}
#endif

void main() {
  vec3 way = normalize(vWay);
  vec3 normal = normalize(vNormal);
  float cosOutside = clamp(-dot(way, normal), 0.0, 1.0);
  float cosInside = sqrt(1.0 - (1.0 - cosOutside * cosOutside) / (index * index));
  float share = mirrored(cosOutside, cosInside);
  vec3 light = share * studioLight(reflect(way, normal));
#ifdef TRACED
  vec3 bent = way / index + (cosOutside / index - cosInside) * normal;
  light += inside(vAt, bent, 1.0 - share);
#else
  vec3 lit = 0.35 * studioLight(normal) + 0.65 * studioLight(normalize(normal + 2.0 * vec3(0.0, 0.0, 1.0)));
#ifdef CLEAR
  light += (1.0 - share) * colour * mix(metal, lit, 0.35);
#else
  light += (1.0 - share) * colour * lit;
#endif
#endif
  gl_FragColor = vec4(light, 1.0);
  #include <tonemapping_fragment>
  #include <colorspace_fragment>
}`;
