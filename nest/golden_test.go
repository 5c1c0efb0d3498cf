package nest

import (
	"context"
	"encoding/binary"
	"flag"
	"fmt"
	"hash/fnv"
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"testing"

	"ellwand/nest/layout"
	"ellwand/nest/verify"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/require"
)

var update = flag.Bool("update", false, "write the golden files anew")

// goldenProblems are problems of every kind, with a start where there is one.
func goldenProblems() []goldenProblem {
	ways := []layout.Turn{{}, {Degrees: 180, Direction: 1}}
	triangle := orb.Ring{{0, 0}, {300, 40}, {120, 260}}
	hollow := orb.Ring{{0, 0}, {400, 0}, {400, 90}, {100, 90}, {100, 300}, {0, 300}}
	gap := draftedProblem(6, 2)
	gap.Gap = 5
	gap.Zones = []orb.Ring{{{200, 300}, {320, 310}, {260, 420}}}
	trade := layout.Problem{Width: 1100, Items: []layout.Item{
		{Outline: drafted(1), Copies: 2, Turns: ways, Group: 1, PeriodX: 80},
		{Outline: triangle, Copies: 4, Turns: ways, Group: 1},
		{
			Outline: hollow,
			Copies:  2,
			Turns:   []layout.Turn{{Pin: layout.PinLow}, {Degrees: 180, Pin: layout.PinHigh, Direction: 1}},
			Group:   2,
		},
		{Outline: triangle, Copies: 3, Turns: ways, Tilt: 2, PeriodY: 30},
	}}
	sheet := orb.Polygon{
		{{0, 0}, {1400, 0}, {1400, 600}, {900, 600}, {900, 900}, {0, 900}},
		{{600, 500}, {600, 580}, {680, 580}, {680, 500}},
	}
	sheets := layout.Problem{Sheets: []orb.Polygon{sheet, {rect(500, 700)}}, Items: []layout.Item{
		{Outline: hollow, Copies: 3, Turns: ways}, {Outline: triangle, Copies: 8, Turns: ways}}}
	crowded := sheets
	crowded.Items = []layout.Item{{Outline: hollow, Copies: 20, Turns: ways}}
	quarters := []layout.Turn{{}, {Degrees: 90}, {Degrees: 180}, {Degrees: 270}}
	return []goldenProblem{
		{"drafted pieces", draftedProblem(12, 1), 60},
		{"gap and zone", gap, 60},
		{
			"many copies",
			layout.Problem{Width: 1000, Items: []layout.Item{{Outline: drafted(3), Copies: 24, Turns: ways}}},
			60,
		},
		{"pins, lattices, groups and tilt", trade, 80},
		{"sheets with a hole", sheets, 80},
		{"crowded sheets", crowded, 40},
		{"hollow pieces in quarter turns", layout.Problem{Width: 900, Items: []layout.Item{
			{Outline: hollow, Copies: 8, Turns: quarters}, {Outline: triangle, Copies: 8, Turns: quarters}}}, 80},
		{"squares", squares(32, 1, 4, 7, 8, 9, 10, 14, 15, 18), 10},
	}
}

type goldenProblem struct {
	name    string
	problem layout.Problem
	passes  int
}

// The layout depends on the problem, the seed and the passes alone: the
// lengths and the places are those of the golden file, to the last bit.
func TestLayoutsAreThoseOfTheGoldenFile(t *testing.T) {
	const path = "testdata/golden.csv"
	var lines []string
	for _, g := range goldenProblems() {
		got, err := Solve(context.Background(), g.problem, Options{Passes: g.passes, Seed: 7})
		require.NoError(t, err)
		lines = append(lines, fmt.Sprintf("%s,%d,%v,%016x", strings.ReplaceAll(g.name, ",", ""), got.TotalPasses,
			got.Layout.Length, digest(got.Layout)))
	}
	text := strings.Join(lines, "\n") + "\n"
	if *update {
		require.NoError(t, os.WriteFile(path, []byte(text), 0o644))
	}
	want, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, string(want), text)
}

// A proof takes its sines from math, which may differ in the last bit from one processor to
// the other, and shares none with the search. It decides by tolerances, and what a search
// finds keeps so far within them that places off by a hundred thousand last bits change
// nothing.
func TestNoProofHangsOnTheLastBits(t *testing.T) {
	const bits = 1e5
	random := rand.New(rand.NewPCG(1, 22))
	for _, g := range goldenProblems() {
		got, err := Solve(context.Background(), g.problem, Options{Passes: g.passes, Seed: 7})
		require.NoError(t, err)
		if !got.Fits {
			continue
		}
		size := max(got.Layout.Length, g.problem.Height(), 1000)
		for range 5 {
			off := got.Layout
			off.Placements = slices.Clone(off.Placements)
			for i := range off.Placements {
				at := &off.Placements[i]
				at.X += bits * 0x1p-52 * size * (2*random.Float64() - 1)
				at.Y += bits * 0x1p-52 * size * (2*random.Float64() - 1)
			}
			require.NoError(t, verify.Layout(g.problem, off), g.name)
		}
	}
}

// digest is a hash of every number of the placements.
func digest(l layout.Layout) uint64 {
	h := fnv.New64a()
	for _, at := range l.Placements {
		_ = binary.Write(h, binary.LittleEndian, []int64{int64(at.Item), int64(at.Copy), int64(at.Turn), int64(at.Sheet)})
		_ = binary.Write(h, binary.LittleEndian, []float64{at.Tilt, at.X, at.Y})
	}
	return h.Sum64()
}
