package page

import (
	"encoding/json"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Bags that are laid quickly with one selvedge folded in, and part folded, part open.
const bagInOne, bagInTwo = "baginone.yaml", "bagintwo.yaml"

// inTwo is a visit of a page with a job of a lay of two parts.
type inTwo struct {
	*visit
	job, kind, spot, address string
	next                     func(name string) map[string]any
}

// visitInTwo opens a job of testdata and listens to it.
func visitInTwo(t *testing.T, job, width, kind string) inTwo {
	text, err := os.ReadFile(filepath.Join("testdata", job))
	require.NoError(t, err)
	v := newVisit(t)
	require.NoError(t, os.WriteFile(v.folder+"/blouse.yaml", text, 0o600))
	v.enter()
	return inTwo{v, string(text), kind, `"cloth":"shell","width":"` + width + `","lay":"` + kind + `"`,
		"/api/jobs/blouse.yaml/layout?cloth=shell&width=" + width + "&lay=" + url.QueryEscape(kind), v.listen()}
}

// laid is the layout when the search for it is over.
func (v inTwo) laid() map[string]any {
	v.t.Helper()
	v.told("POST", "/api/jobs/blouse.yaml/lay", `{`+v.spot+`,"effort":"quick"}`)
	done := v.next("done")
	require.Nil(v.t, done["refused"], done)
	return v.shown()
}

func (v inTwo) shown() map[string]any { return v.told("GET", v.address, "") }

// look at a piece that is held somewhere; more is JSON.
func (v inTwo) look(id string, at any, more string) map[string]any {
	v.t.Helper()
	where, err := json.Marshal(at)
	require.NoError(v.t, err)
	return v.told("POST", "/api/jobs/blouse.yaml/look", `{`+v.spot+`,"piece":"`+id+`","at":`+string(where)+more+`}`)
}

// act on a piece of the lay; more is JSON.
func (v inTwo) act(base int, what, id, more string) {
	v.t.Helper()
	v.told("POST", "/api/jobs/blouse.yaml/act",
		fmt.Sprintf(`{"base":%d,"do":[{"%s":{%s,"piece":%s%s}}]}`, base, what, v.spot, id, more))
}

var keptInTwo = map[string]struct{ job, width, written string }{
	"one selvedge folded in": {bagInOne, "1400mm", "folded_in: 34"},
	"part folded, part open": {bagInTwo, "1020mm", "lay: part folded, part open"},
}

// In lays of two parts a piece is moved on its part; it is written with that, and with how
// far the selvedge is folded in, and stays so when the rest is laid round it.
func TestPieceIsLaidByHandInTwoParts(t *testing.T) {
	for kind, tt := range keptInTwo {
		v := visitInTwo(t, tt.job, tt.width, kind)
		first := v.laid()
		require.Equal(t, kind, first["lay"])
		require.Len(t, first["parts"], 2)
		const id = "bag//flap/1"

		over := v.look(id, []float64{20, 20}, `,"slide":false`)
		assert.Equal(t, false, over["free"])
		assert.Contains(t, fmt.Sprint(over["broken"]), "it cannot go onto the other part: a single piece", kind)

		far := first["length_mm"].(float64) + 40
		beyond := v.look(id, []float64{far, 950}, `,"slide":true`)
		require.Equal(t, true, beyond["free"], beyond)
		at, err := json.Marshal(beyond["at"])
		require.NoError(t, err)
		v.act(1, "place", `"`+id+`"`, `,"at":`+string(at)+`,"locked":true`)
		assert.Contains(t, v.file(), tt.written)
		assert.Contains(t, v.file(), "on_open: yes")
		moved := v.shown()
		assert.Equal(t, true, moved["verified"], kind)
		again := v.laid()
		for _, one := range []map[string]any{moved, again} {
			assert.Equal(t, true, pieceOf(one, id)["by_hand"], kind)
			assert.InDeltaSlice(t, floats(beyond["at"]), floats(pieceOf(one, id)["at"]), 1e-3, kind)
		}
		assert.Contains(t, fmt.Sprint(again["notes"]), "Laid by hand, and kept so: flap")

		v.act(2, "lock", `"bag//side/1"`, "")
		assert.Contains(t, v.file(), "piece: side")
		assert.Equal(t, true, v.shown()["verified"])
		v.act(3, "free", "null", "")
		assert.Equal(t, v.job, v.file())
	}
}

// copiesOf a piece in a layout, by its garment and name.
func copiesOf(layout map[string]any, name string) (ids []string) {
	for _, one := range layout["pieces"].([]any) {
		if id := one.(map[string]any)["id"].(string); strings.HasPrefix(id, name+"/") {
			ids = append(ids, id)
		}
	}
	return ids
}

// A piece that is moved onto the other part takes its copy along, or becomes one with it,
// and stays there when the rest is laid round it. What was written of a copy that does not
// lie by itself any more is gone.
func TestPieceIsMovedOntoTheOtherPart(t *testing.T) {
	for kind, tt := range map[string]struct {
		name string
		held []string // so that something stays on the folded part
	}{
		"one selvedge folded in": {"bag//side", nil},
		"part folded, part open": {"bag//front", []string{"bag//side/1"}},
	} {
		v := visitInTwo(t, keptInTwo[kind].job, keptInTwo[kind].width, kind)
		now, name, id, base := v.laid(), tt.name, tt.name+"/1", 1
		for _, held := range tt.held {
			v.act(base, "lock", `"`+held+`"`, "")
			base++
		}
		for range 2 {
			copies := copiesOf(now, name)
			onto := len(copies) == 1
			at, count := []float64{now["length_mm"].(float64) + 100, 700}, []any{1.0, nil}
			if !onto {
				at, count = []float64{505, 20}, []any{nil, 1.0}
				v.act(base, "lock", `"`+name+`/2"`, "")
				base++
			}
			found := v.look(id, at, fmt.Sprintf(`,"on_open":%v,"slide":true`, onto))
			assert.Equal(t, []any{true, onto, count[0], count[1]},
				[]any{found["other_part"], found["on_open"], found["comes"], found["goes"]}, "%s: %v", kind, found)
			v.act(base, "place", `"`+id+`"`, fmt.Sprintf(`,"at":[%v,%v],"turn":%v,"mirrored":%v,"on_fold":%v,"on_open":%v`,
				floats(found["at"])[0], floats(found["at"])[1], found["turn"], found["mirrored"], found["on_fold"], onto))
			base++
			assert.Equal(t, onto, strings.Contains(v.file(), "on_open: yes"), v.file())
			assert.Equal(t, 1+len(tt.held), strings.Count(v.file(), "piece: "), v.file())
			moved := v.shown()
			assert.Equal(t, found["free"], moved["verified"], "%s: %v", kind, found)
			now = v.laid()
			for _, one := range []map[string]any{moved, now} {
				assert.Len(t, copiesOf(one, name), 3-len(copies), kind)
				assert.InDeltaSlice(t, floats(found["at"]), floats(pieceOf(one, id)["at"]), 1e-3, kind)
				assert.Equal(t, true, pieceOf(one, id)["by_hand"], kind)
			}
		}
		v.told("POST", "/api/jobs/blouse.yaml/act", fmt.Sprintf(`{"base":%d,"do":[{"restore":{"step":0}}]}`, base))
		assert.Equal(t, v.job, v.file())
	}
}

// Where two parts gain nothing the lay of one part is shown, and its pieces are moved there.
func TestLayThatCameDownToOnePartIsNotMoved(t *testing.T) {
	v := visitInTwo(t, bagInOne, "1400mm", "part folded, part open")
	v.told("POST", "/api/jobs/blouse.yaml/lay", `{`+v.spot+`,"effort":"quick"}`)
	v.next("done")
	status, text := v.ask("POST", "/api/jobs/blouse.yaml/look", `{`+v.spot+`,"piece":"bag//flap/1","at":[20,320]}`)
	assert.Equal(t, 422, status)
	assert.Contains(t, text, "choose that way of laying")
}
