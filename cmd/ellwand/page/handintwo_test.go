package page

import (
	"encoding/json"
	"fmt"
	"net/url"
	"os"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// Bags that are laid quickly with one selvedge folded in, and part folded, part open.
const (
	bagInOne = `job: Bag # hers
units: cm
garments:
  - name: bag
    pieces:
      - {name: side, width: 30, height: 50, cut: 2, pair: true}
      - {name: base, width: 28, height: 40, cut: 2, pair: true}
      - {name: back, width: 60, height: 60}
      - {name: flap, width: 60, height: 30}
cloths:
  - name: shell
    width: 140
    nap: one way
`
	bagInTwo = `job: Bag # hers
units: cm
garments:
  - name: bag
    pieces:
      - {name: back, width: 48, height: 56, cut: 2, pair: true}
      - {name: front, width: 33, height: 50, cut: 2, pair: true}
      - {name: side, width: 35, height: 45, cut: 2, pair: true}
      - {name: flap, width: 60, height: 20}
cloths:
  - name: shell
    width: 102
    nap: one way
`
)

// In lays of two parts a piece is moved on its part; it is written with that, and with how
// far the selvedge is folded in, and stays so when the rest is laid round it.
func TestPieceIsLaidByHandInTwoParts(t *testing.T) {
	for kind, tt := range map[string]struct{ job, width, written string }{
		"one selvedge folded in": {bagInOne, "1400mm", "folded_in: 34"},
		"part folded, part open": {bagInTwo, "1020mm", "lay: part folded, part open"},
	} {
		v := newVisit(t)
		require.NoError(t, os.WriteFile(v.folder+"/blouse.yaml", []byte(tt.job), 0o600))
		v.enter()
		next := v.listen()
		spot := `"cloth":"shell","width":"` + tt.width + `","lay":"` + kind + `"`
		address := "/api/jobs/blouse.yaml/layout?cloth=shell&width=" + tt.width + "&lay=" + url.QueryEscape(kind)
		laid := func() map[string]any {
			v.told("POST", "/api/jobs/blouse.yaml/lay", `{`+spot+`,"effort":"quick"}`)
			done := next("done")
			require.Nil(t, done["refused"], done)
			return v.told("GET", address, "")
		}
		first := laid()
		require.Equal(t, kind, first["lay"])
		require.Len(t, first["parts"], 2)
		const id = "bag//flap/1"

		over := v.told("POST", "/api/jobs/blouse.yaml/look", `{`+spot+`,"piece":"`+id+`","at":[20,320],"slide":false}`)
		assert.Equal(t, false, over["free"])
		assert.Contains(t, fmt.Sprint(over["broken"]), "onto the other part of the lay")

		far := first["length_mm"].(float64) + 40
		beyond := v.told("POST", "/api/jobs/blouse.yaml/look",
			fmt.Sprintf(`{`+spot+`,"piece":"`+id+`","at":[%g,950],"slide":true}`, far))
		require.Equal(t, true, beyond["free"], beyond)
		at, err := json.Marshal(beyond["at"])
		require.NoError(t, err)
		v.told("POST", "/api/jobs/blouse.yaml/act",
			`{"base":1,"do":[{"place":{`+spot+`,"piece":"`+id+`","at":`+string(at)+`,"locked":true}}]}`)
		assert.Contains(t, v.file(), tt.written)
		assert.Contains(t, v.file(), "on_open: yes")
		moved := v.told("GET", address, "")
		assert.Equal(t, true, moved["verified"], kind)
		again := laid()
		for _, one := range []map[string]any{moved, again} {
			assert.Equal(t, true, pieceOf(one, id)["by_hand"], kind)
			assert.InDeltaSlice(t, floats(beyond["at"]), floats(pieceOf(one, id)["at"]), 1e-3, kind)
		}
		assert.Contains(t, fmt.Sprint(again["notes"]), "Laid by hand, and kept so: flap")

		v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":2,"do":[{"lock":{`+spot+`,"piece":"bag//side/1"}}]}`)
		assert.Contains(t, v.file(), "piece: side")
		assert.Equal(t, true, v.told("GET", address, "")["verified"])
		v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":3,"do":[{"free":{`+spot+`,"piece":null}}]}`)
		assert.Equal(t, tt.job, v.file())
	}
}

// Where two parts gain nothing the lay of one part is shown, and its pieces are moved there.
func TestLayThatCameDownToOnePartIsNotMoved(t *testing.T) {
	v := newVisit(t)
	require.NoError(t, os.WriteFile(v.folder+"/blouse.yaml", []byte(bagInOne), 0o600))
	v.enter()
	next := v.listen()
	const spot = `"cloth":"shell","width":"1400mm","lay":"part folded, part open"`
	v.told("POST", "/api/jobs/blouse.yaml/lay", `{`+spot+`,"effort":"quick"}`)
	next("done")
	status, text := v.ask("POST", "/api/jobs/blouse.yaml/look", `{`+spot+`,"piece":"bag//flap/1","at":[20,320]}`)
	assert.Equal(t, 422, status)
	assert.Contains(t, text, "choose that way of laying")
}
