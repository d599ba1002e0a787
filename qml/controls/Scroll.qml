// What is too long for its place. Follows the keyboard, and shows at its edge that there is more.
import QtQuick
import Ambit

Flickable {
    id: scroll

    readonly property Item focused: Window.activeFocusItem
    /// Of its top, what something that keeps its place lies over.
    property real covered: 0

    function holds(item: Item): bool {
        for (let up = item; up; up = up.parent)
            if (up === scroll.contentItem)
                return true;
        return false;
    }
    function reveal(item: Item) {
        if (!item || !holds(item))
            return;
        const top = item.mapToItem(scroll.contentItem, 0, 0).y - covered;
        const height = item.height + covered;
        const most = Math.max(0, scroll.contentHeight - scroll.height);
        if (top < scroll.contentY)
            scroll.contentY = Math.max(0, top - 12);
        else if (top + height > scroll.contentY + scroll.height && (height < scroll.height || top - scroll.contentY > scroll.height / 2)) // what is higher than the page is read from its beginning
            scroll.contentY = Math.max(0, Math.min(most, top - 12, top + height + 12 - scroll.height));
    }

    clip: true
    boundsBehavior: Flickable.StopAtBounds
    contentWidth: width
    onFocusedChanged: reveal(focused)
    onHeightChanged: reveal(focused) // keys below it have grown, or a keyboard has come

    ScrollMark {
        of: scroll
    }
}
