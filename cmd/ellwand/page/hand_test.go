package page

import (
	"bufio"
	"encoding/json"
	"fmt"
	"net/http"
	"os"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// listen to the events of the job; next waits for one of a name.
func (v *visit) listen() (next func(name string) map[string]any) {
	v.t.Helper()
	answer, err := v.browser.Get(v.web.URL + "/api/jobs/blouse.yaml/events")
	require.NoError(v.t, err)
	require.Equal(v.t, http.StatusOK, answer.StatusCode)
	v.t.Cleanup(func() { answer.Body.Close() })
	lines := bufio.NewScanner(answer.Body)
	lines.Buffer(nil, 8<<20)
	return func(name string) map[string]any {
		for lines.Scan() {
			if lines.Text() != "event: "+name {
				continue
			}
			require.True(v.t, lines.Scan())
			var out map[string]any
			require.NoError(v.t, json.Unmarshal([]byte(strings.TrimPrefix(lines.Text(), "data: ")), &out))
			return out
		}
		require.Fail(v.t, "the stream ended", name)
		return nil
	}
}

const openSpot = `"cloth":"shell","width":"1400mm","lay":"open"`

// laid is the layout of the open lay once its search is over.
func (v *visit) laid(next func(string) map[string]any) map[string]any {
	v.t.Helper()
	v.told("POST", "/api/jobs/blouse.yaml/lay", `{`+openSpot+`,"effort":"quick"}`)
	done := next("done")
	shown := v.told("GET", "/api/jobs/blouse.yaml/layout?cloth=shell&width=1400mm&lay=open", "")
	require.Equal(v.t, false, shown["searching"], done)
	return shown
}

func pieceOf(layout map[string]any, id string) map[string]any {
	for _, one := range layout["pieces"].([]any) {
		if piece := one.(map[string]any); piece["id"] == id {
			return piece
		}
	}
	return nil
}

func TestPieceIsLaidByHand(t *testing.T) {
	v := newVisit(t).enter()
	next := v.listen()
	status, _ := v.ask("GET", "/api/jobs/blouse.yaml/layout?cloth=shell&width=1400mm&lay=open", "")
	assert.Equal(t, 404, status)
	first := v.laid(next)
	assert.Equal(t, true, first["verified"])
	const id = "blouse//sleeve/1"
	sleeve := pieceOf(first, id)
	require.NotNil(t, sleeve)

	// Held over another piece it overlaps; let go beyond all it is free.
	over := v.told("POST", "/api/jobs/blouse.yaml/look", `{`+openSpot+`,"piece":"`+id+`","at":[400,700],"slide":false}`)
	assert.Equal(t, false, over["free"])
	far := first["length_mm"].(float64) + 900
	beyond := v.told("POST", "/api/jobs/blouse.yaml/look",
		fmt.Sprintf(`{`+openSpot+`,"piece":"`+id+`","at":[%g,700],"slide":true}`, far))
	assert.Equal(t, true, beyond["free"], beyond)
	assert.Empty(t, beyond["broken"])
	assert.NotEqual(t, first["amount"], beyond["amount"], "the amount follows the hand")

	at, err := json.Marshal(beyond["at"])
	require.NoError(t, err)
	changed := v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":1,"do":[{"place":{`+openSpot+`,"piece":"`+id+`","at":`+string(at)+`,"locked":true}}]}`)
	assert.Contains(t, v.file(), "laid_by_hand")
	assert.Contains(t, v.file(), "piece: sleeve")
	assert.Contains(t, v.file(), "# her name")
	assert.Empty(t, changed["faults"])
	moved := v.told("GET", "/api/jobs/blouse.yaml/layout?cloth=shell&width=1400mm&lay=open", "")
	assert.Equal(t, true, moved["verified"])
	assert.Equal(t, true, pieceOf(moved, id)["by_hand"])
	assert.InDelta(t, beyond["at"].([]any)[0].(float64), pieceOf(moved, id)["at"].([]any)[0].(float64), 0.001)

	// The rest is laid round it, and it stays.
	again := v.laid(next)
	assert.InDelta(t, beyond["at"].([]any)[0].(float64), pieceOf(again, id)["at"].([]any)[0].(float64), 0.001)
	assert.Contains(t, fmt.Sprint(again["notes"]), "Laid by hand, and kept so: sleeve")

	// What overlaps is drawn, and not verified.
	v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":2,"do":[{"place":{`+openSpot+`,"piece":"blouse//sleeve/2","at":`+string(at)+`}}]}`)
	bad := v.told("GET", "/api/jobs/blouse.yaml/layout?cloth=shell&width=1400mm&lay=open", "")
	assert.Equal(t, false, bad["verified"])
	v.told("POST", "/api/jobs/blouse.yaml/lay", `{`+openSpot+`}`)
	assert.Contains(t, next("done")["sentence"], "overlap")

	v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":3,"do":[{"free":{`+openSpot+`,"piece":null}}]}`)
	assert.Equal(t, blouse, v.file())
	v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":4,"do":[{"restore":{"step":1}}]}`)
	assert.Contains(t, v.file(), "laid_by_hand")
	v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":5,"do":[{"undo":{}}]}`)
	assert.Equal(t, blouse, v.file())
}

func TestPieceIsLockedWhereItLies(t *testing.T) {
	v := newVisit(t).enter()
	next := v.listen()
	before := v.laid(next)
	v.told("POST", "/api/jobs/blouse.yaml/act",
		`{"base":1,"do":[{"lock":{`+openSpot+`,"piece":"blouse//sleeve/2"}},`+
			`{"lock":{`+openSpot+`,"piece":"blouse//sleeve/1"}}]}`)
	after := v.told("GET", "/api/jobs/blouse.yaml/layout?cloth=shell&width=1400mm&lay=open", "")
	assert.Equal(t, true, after["verified"])
	for _, id := range []string{"blouse//sleeve/1", "blouse//sleeve/2"} {
		assert.Equal(t, true, pieceOf(after, id)["locked"])
		assert.InDeltaSlice(t, floats(pieceOf(before, id)["at"]), floats(pieceOf(after, id)["at"]), 1e-4)
	}
	again := v.laid(next)
	for _, id := range []string{"blouse//sleeve/1", "blouse//sleeve/2"} {
		assert.InDeltaSlice(t, floats(pieceOf(before, id)["at"]), floats(pieceOf(again, id)["at"]), 1e-4)
	}
	status, _ := v.ask("POST", "/api/jobs/blouse.yaml/act",
		`{"base":2,"do":[{"lock":{`+openSpot+`,"piece":"blouse//hat/1"}}]}`)
	assert.Equal(t, 422, status)
}

func floats(list any) []float64 {
	var out []float64
	for _, one := range list.([]any) {
		out = append(out, one.(float64))
	}
	return out
}

func TestChangeFromOutsideIsTakenIn(t *testing.T) {
	v := newVisit(t).enter()
	v.told("GET", "/api/jobs/blouse.yaml", "")
	changed := strings.Replace(blouse, "94", "95", 1)
	require.NoError(t, os.WriteFile(v.folder+"/blouse.yaml", []byte(changed), 0o600))
	status, text := v.ask("POST", "/api/jobs/blouse.yaml/act", `{"base":1,"do":[{"unset":{"path":["client"]}}]}`)
	assert.Equal(t, 409, status)
	assert.Contains(t, text, "changed outside")
	assert.Equal(t, changed, v.file())
	v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":2,"do":[{"keepMine":{}}]}`)
	assert.Equal(t, blouse, v.file())
	v.told("POST", "/api/jobs/blouse.yaml/act", `{"base":3,"do":[{"redo":{}}]}`)
	assert.Equal(t, changed, v.file())
}

func TestClothOnTheTable(t *testing.T) {
	v := newVisit(t).enter()
	const piece = `{"cloth":"shell","width":"1400mm","length":"%s","outline":%s,"flaws":[],"cut":[%s]}`
	enough := v.told("POST", "/api/jobs/blouse.yaml/remnant", fmt.Sprintf(piece, "1600mm", "null", ""))
	assert.Equal(t, "yes", enough["answer"])
	assert.NotEmpty(t, enough["layout"])
	never := v.told("POST", "/api/jobs/blouse.yaml/remnant", fmt.Sprintf(piece, "300mm", "null", ""))
	assert.Equal(t, "cannot be", never["answer"])
	shaped := v.told("POST", "/api/jobs/blouse.yaml/remnant",
		fmt.Sprintf(piece, "1600mm", "[[0,0],[1800,0],[1800,900],[1500,1400],[0,1400]]", ""))
	assert.Equal(t, "yes", shaped["answer"])
	assert.Equal(t, blouse, v.file(), "nothing is changed by asking")
	status, text := v.ask("POST", "/api/jobs/blouse.yaml/remnant", fmt.Sprintf(piece, "0mm", "null", ""))
	assert.Equal(t, 422, status)
	assert.NotContains(t, text, "blouse.yaml:")
	cut := `"blouse//sleeve/1","blouse//sleeve/2","blouse//front bodice/1"`
	less := v.told("POST", "/api/jobs/blouse.yaml/remnant", fmt.Sprintf(piece, "600mm", "null", cut))
	assert.Equal(t, "yes", less["answer"])
}

// A layout is drawn while its search still goes on.
func TestLayoutIsShownWhileTheSearchGoesOn(t *testing.T) {
	v := newVisit(t).enter()
	next := v.listen()
	v.told("POST", "/api/jobs/blouse.yaml/lay", `{`+openSpot+`,"effort":"quick"}`)
	early := next("layout")
	assert.Equal(t, true, early["searching"])
	assert.Equal(t, true, early["verified"])
	assert.NotEmpty(t, early["pieces"])
	last := next("layout")
	for last["searching"] == true {
		last = next("layout")
	}
	assert.LessOrEqual(t, last["length_mm"], early["length_mm"])
}
