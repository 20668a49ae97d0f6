/* The floating-point states that a caller may be in. Calls are made in each of them; each must be found as it was, and
 * must not change an answer. */
#ifndef FLOAT_STATE_H
#define FLOAT_STATE_H

#include <fenv.h>
#include <stdio.h>
#if defined(__x86_64__)
#include <xmmintrin.h>
#endif

typedef struct float_state {
    int rounding, flags;
    unsigned mxcsr; /* 0 where there is no such register */
} float_state;

/* The usual state without a flag, two ways of rounding, every sticky flag set, and traps. */
enum { STATE_DEFAULT, STATE_UPWARD, STATE_TOWARD_ZERO, STATE_ALL_FLAGS, STATE_TRAPS, STATES };

static float_state float_state_now(void) {
    float_state now;
    now.rounding = fegetround();
    now.flags = fetestexcept(FE_ALL_EXCEPT);
#if defined(__x86_64__)
    now.mxcsr = _mm_getcsr();
#else
    now.mxcsr = 0;
#endif
    return now;
}

static int float_state_same(float_state a, float_state b) {
    return a.rounding == b.rounding && a.flags == b.flags && a.mxcsr == b.mxcsr;
}

static void float_state_tell(float_state state, char *text, size_t size) {
    snprintf(text, size, "rounding %x, flags %x, mxcsr %x", (unsigned)state.rounding, (unsigned)state.flags,
             state.mxcsr);
}

/* Whether this machine keeps sticky flags and traps; emulators may not. */
static int float_state_kept(void) {
    int kept;
    feclearexcept(FE_ALL_EXCEPT);
    feraiseexcept(FE_INVALID);
    kept = fetestexcept(FE_ALL_EXCEPT) == FE_INVALID;
    fesetenv(FE_DFL_ENV);
    return kept;
}

/* Takes a state; nothing is computed between this and the call. */
static float_state float_state_take(int state) {
    fesetenv(FE_DFL_ENV);
    switch (state) {
    case STATE_UPWARD:
        fesetround(FE_UPWARD);
        break;
    case STATE_TOWARD_ZERO:
        fesetround(FE_TOWARDZERO);
        break;
    case STATE_ALL_FLAGS:
        feraiseexcept(FE_ALL_EXCEPT);
#if defined(__x86_64__)
        _mm_setcsr(_mm_getcsr() | 0x003fu);
#endif
        break;
    case STATE_TRAPS:
#if defined(__x86_64__)
        /* Every exception traps but the inexact result; what is denormal counts as zero, and becomes zero. */
        _mm_setcsr(0x8000u | 0x0040u | 0x1000u);
#else
        feraiseexcept(FE_OVERFLOW);
        fesetround(FE_DOWNWARD);
#endif
        break;
    default:
        break;
    }
    return float_state_now();
}

#endif
