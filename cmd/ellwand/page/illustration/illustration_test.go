package illustration

import (
	"bytes"
	"encoding/xml"
	"io"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/paulmach/orb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/draft"
	"ellwand/draft/bodice"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/pieces"
)

// A picture is one well-formed document in which something is drawn.
func assertPicture(t *testing.T, picture []byte) {
	t.Helper()
	reader := xml.NewDecoder(bytes.NewReader(picture))
	paths := 0
	for {
		token, err := reader.Token()
		if err == io.EOF {
			break
		}
		require.NoError(t, err)
		if start, ok := token.(xml.StartElement); ok && start.Name.Local == "path" {
			paths++
		}
	}
	assert.Greater(t, paths, 3)
	assert.NotContains(t, string(picture), "NaN")
	assert.Less(t, len(picture), 40_000, "a page of pictures stays light")
}

func TestGarments(t *testing.T) {
	seen := map[string]string{}
	for _, name := range Garments() {
		var out bytes.Buffer
		require.NoError(t, Garment(&out, name), name)
		assertPicture(t, out.Bytes())
		body := strings.Replace(out.String(), name, "", 1)
		assert.Empty(t, seen[body], "%s looks like another", name)
		seen[body] = name
	}
	assert.ErrorIs(t, Garment(io.Discard, "crinoline"), ErrUnknown)
}

func TestTapeForEveryMeasurement(t *testing.T) {
	for _, m := range draft.Measurements() {
		var out bytes.Buffer
		require.NoError(t, Tape(&out, strings.ReplaceAll(string(m), " ", "_")), "no picture of %s", m)
		assertPicture(t, out.Bytes())
	}
	assert.ErrorIs(t, Tape(io.Discard, "../secret"), ErrUnknown)
}

func TestOptionsHaveAPictureForEveryChoice(t *testing.T) {
	require.NotEmpty(t, Options())
	for _, option := range Options() {
		seen := map[string]string{}
		for choice := range optionSketches[option] {
			var out bytes.Buffer
			require.NoError(t, Option(&out, option, choice), "%s %s", option, choice)
			assertPicture(t, out.Bytes())
			body := strings.Replace(out.String(), choice, "", 1)
			assert.Empty(t, seen[body], "%s: %s looks like another", option, choice)
			seen[body] = choice
		}
	}
	assert.ErrorIs(t, Option(io.Discard, "skirt.shape", "crinoline"), ErrUnknown)
	assert.ErrorIs(t, Option(io.Discard, "skirt.colour", "red"), ErrUnknown)
}

// The pictures show what a job may choose: no choice is missing, and none is made up.
func TestPicturesShowEveryChoice(t *testing.T) {
	for option, choices := range map[string][]string{
		"bodice.princess": bodice.Princess(0).Words(), "bodice.dart": bodice.Shaping(0).Words(),
		"sleeve.style": sleeve.Style(0).Words(), "sleeve.reach": sleeve.Reach(0).Words(),
		"skirt.shape": skirt.Shape(0).Words(),
	} {
		assert.ElementsMatch(t, choices, slices.Collect(maps.Keys(optionSketches[option])), option)
	}
	assert.Len(t, Options(), 5)
}

func TestJob(t *testing.T) {
	piece := func(wide, high float64) pieces.Piece {
		return pieces.Piece{Name: "pocket", Edges: []pieces.Edge{
			{Path: pieces.Path{pieces.Line{To: orb.Point{wide, 0}}}},
			{Path: pieces.Path{pieces.Line{From: orb.Point{wide, 0}, To: orb.Point{wide, high}}}},
			{Path: pieces.Path{pieces.Line{From: orb.Point{wide, high}, To: orb.Point{0, high}}}},
			{Path: pieces.Path{pieces.Line{From: orb.Point{0, high}}}},
		}}
	}
	var out bytes.Buffer
	require.NoError(t, Job(&out, "pockets", []pieces.Piece{piece(120, 140), piece(900, 300), piece(50, 1200)}))
	assertPicture(t, out.Bytes())
	require.NoError(t, Job(&out, "nothing yet", nil))
}
